import { Button } from "@fluentui/react-button";
import { makeStyles } from "@griffel/react";
import type { ReactElement } from "react";
import type { PartsComing } from "./useLaterParts";

const useStyles = makeStyles({ text: { margin: "0 0 8px" } });

/** In the place of a view that is not here yet. */
export function ViewComing({ failed, ask }: Pick<PartsComing, "failed" | "ask">): ReactElement {
  const styles = useStyles();
  if (!failed) return <p role="status">Loading …</p>;
  return (
    <>
      <p role="alert" className={styles.text}>
        This part of the pane could not be loaded.
      </p>
      <Button onClick={ask}>Try again</Button>
    </>
  );
}
