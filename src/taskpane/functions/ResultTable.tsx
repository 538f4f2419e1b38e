import { tokens } from "@fluentui/react-theme";
import { makeStyles, mergeClasses } from "@griffel/react";
import type { ReactElement } from "react";
import { shownValue } from "./resultWords";
import type { Cell } from "./callFunction";

const useStyles = makeStyles({
  frame: {
    overflowX: "auto",
    margin: "4px 0",
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  table: { borderCollapse: "collapse", fontSize: tokens.fontSizeBase200 },
  cell: {
    padding: "2px 8px",
    textAlign: "left",
    verticalAlign: "top",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  // Words are as wide as they are, up to a width at which they go on below: nothing is cut.
  words: { display: "block", width: "max-content", maxWidth: "112px", overflowWrap: "break-word" },
  heading: { display: "inline-block", maxWidth: "72px", whiteSpace: "normal" }, // a unit goes below its quantity
  sentence: { maxWidth: "240px" },
  number: { textAlign: "right", whiteSpace: "nowrap", fontVariantNumeric: "tabular-nums" },
  more: { margin: "0 0 4px", fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
});

const LONG = 40; // characters of a note rather than a name
const MOST = 48; // rows: a whole table of runs

interface ResultTableProps {
  readonly label: string;
  readonly rows: readonly (readonly Cell[])[];
  readonly headed: boolean;
}

/** Rows of cells as a small table, which scrolls by itself where it is wider than the pane. */
export function ResultTable({ label, rows, headed }: ResultTableProps): ReactElement {
  const styles = useStyles();
  const shown = rows.slice(0, MOST);
  const isNumeric = (column: number): boolean => shown.slice(1).some((row) => typeof row[column] === "number");
  const words = (cell: Cell, look = ""): ReactElement => {
    const text = shownValue(cell);
    return <span className={mergeClasses(styles.words, text.length > LONG && styles.sentence, look)}>{text}</span>;
  };
  return (
    <>
      <div className={styles.frame} role="region" aria-label={label} tabIndex={0}>
        <table className={styles.table}>
          <tbody>
            {shown.map((row, down) => (
              <tr key={down}>
                {row.map((cell, across) =>
                  headed && down === 0 ? (
                    <th
                      key={across}
                      scope="col"
                      className={mergeClasses(styles.cell, isNumeric(across) && styles.number)}
                    >
                      {words(cell, styles.heading)}
                    </th>
                  ) : (
                    <td key={across} className={mergeClasses(styles.cell, typeof cell === "number" && styles.number)}>
                      {typeof cell === "number" ? shownValue(cell) : words(cell)}
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {rows.length > MOST && (
        <p className={styles.more}>
          The first {MOST} of {rows.length} rows.
        </p>
      )}
    </>
  );
}
