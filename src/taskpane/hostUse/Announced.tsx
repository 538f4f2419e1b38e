import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";

const useStyles = makeStyles({
  hidden: {
    position: "absolute",
    width: "1px",
    height: "1px",
    margin: "-1px",
    overflow: "hidden",
    clipPath: "inset(50%)",
    whiteSpace: "nowrap",
  },
});

/** Says a sentence to screen readers where the eye finds it beside the button that was pressed. */
export function Announced({ sentence }: { readonly sentence: string }): ReactElement {
  const styles = useStyles();
  return (
    <p role="status" className={styles.hidden}>
      {sentence}
    </p>
  );
}
