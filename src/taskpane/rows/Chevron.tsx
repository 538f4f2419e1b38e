import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";

const useStyles = makeStyles({
  chevron: {
    flexShrink: 0,
    width: "12px",
    height: "20px", // of a line
    fill: "none",
    stroke: tokens.colorNeutralForeground2,
    strokeWidth: "1.5px",
    "@media (forced-colors: active)": { stroke: "ButtonText" },
  },
});

const paths = { onward: "M4 6 l4 4 l-4 4", down: "M2 8 l4 4 l4 -4", up: "M2 12 l4 -4 l4 4" };

/** What a row does when it is pressed: lead onward, open or close. Screen readers have it from the button. */
export function Chevron({ points }: { readonly points: keyof typeof paths }): ReactElement {
  const styles = useStyles();
  return (
    <svg className={styles.chevron} viewBox="0 0 12 20" aria-hidden="true" focusable="false">
      <path d={paths[points]} />
    </svg>
  );
}
