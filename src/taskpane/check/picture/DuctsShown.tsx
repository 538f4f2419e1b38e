import type { ReactElement } from "react";
import { tokens } from "@fluentui/react-theme";
import { makeStyles } from "@griffel/react";
import type { UnitSystem } from "../../../reference/quantities";
import { ResultTable } from "../../functions/ResultTable";
import { DuctTree } from "./DuctTree";
import { treeRows } from "./pictureTables";
import type { PictureRun } from "./runsOfPicture";

const useStyles = makeStyles({
  numbers: {
    cursor: "pointer",
    margin: "4px 0",
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
});

interface DuctsShownProps {
  readonly runs: readonly PictureRun[];
  readonly system: UnitSystem;
}

/** The tree of ducts, and the same numbers as a table. */
export function DuctsShown({ runs, system }: DuctsShownProps): ReactElement {
  const styles = useStyles();
  return (
    <>
      <DuctTree runs={runs} system={system} />
      <details>
        {/* Excel moves the focus itself, and its list of what can have it knows no summary */}
        <summary className={styles.numbers} tabIndex={0}>
          The same as a table
        </summary>
        <ResultTable label="Velocities in numbers" rows={treeRows(runs, system)} headed />
      </details>
    </>
  );
}
