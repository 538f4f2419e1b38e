import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { ReactElement, ReactNode } from "react";

const useStyles = makeStyles({
  group: { border: "none", margin: "0 0 12px", padding: 0, minWidth: 0 },
  legend: { padding: 0, fontWeight: tokens.fontWeightSemibold },
});

/** Things to choose from, under what they are. */
export function Choice({ legend, children }: { readonly legend: string; readonly children: ReactNode }): ReactElement {
  const styles = useStyles();
  return (
    <fieldset className={styles.group}>
      <legend className={styles.legend}>{legend}</legend>
      {children}
    </fieldset>
  );
}
