import { budgetColumns } from "../../reference/answerColumns";
import { leakWords, shownColumns } from "../../reference/columnsOfRuns";
import type { ShownRunColumn } from "../../reference/runColumns";
import { cellAddress, columnLetters } from "../address";
import type { Frame } from "./frame";

/** Where things stand that more than one sheet refers to. */

/** The runs table on the sheet Runs: its header row, and forty rows under it. Column A holds the checks. */
export const RUNS_HEADER = 8;
export const RUNS_FIRST = RUNS_HEADER + 1;
export const RUNS_LAST = RUNS_HEADER + 40;
export const RUNS_COLUMN = 2; // B

/** Says there, beside what is asked of the fan, that no device is counted. */
export const NO_DEVICE_CELL = "$H$6";

/** Where a column of the runs table stands. */
export const runsColumnPlace = (column: ShownRunColumn): number =>
  RUNS_COLUMN + shownColumns.findIndex(({ name }) => name === column);

const letters = (column: ShownRunColumn): string => columnLetters(runsColumnPlace(column));

/**
 * A column of the runs table on the sheet Runs itself. It begins with its header, as the whole table does: a row inserted
 * right under the headings then belongs to it.
 */
export const runsColumnRange = (column: ShownRunColumn): string =>
  `$${letters(column)}$${RUNS_HEADER}:$${letters(column)}$${RUNS_LAST}`;

/** The same as a formula on any sheet writes it. */
export const runsColumn = (frame: Frame, column: ShownRunColumn): string => frame.ref("runs", runsColumnRange(column));

export const runCell = (column: ShownRunColumn, row: number): string => cellAddress(runsColumnPlace(column), row);

export const runsRange = (last: number): string =>
  `$${columnLetters(RUNS_COLUMN)}$${RUNS_HEADER}:$${columnLetters(RUNS_COLUMN + shownColumns.length - 1)}$${last}`;

/** The whole runs table as a formula on any sheet writes it. */
export const runsTable = (frame: Frame): string => frame.ref("runs", runsRange(RUNS_LAST));

/**
 * A table of runs with the leaks left blank, wherever their columns stand: also where somebody moved one, or put another between.
 * What stands in brackets in a header is not looked at, as the functions do not.
 */
export function tableWithoutLeaks(header: string, table: string): string {
  const headers = `SUBSTITUTE(SUBSTITUTE(${header},"[","("),"]",")")`;
  const open = `FIND("(",${headers})`;
  const names = `IFERROR(REPLACE(${headers},${open},FIND(")",${headers})-${open}+1,""),${headers})`;
  const isLeak = leakWords.map((word) => `ISNUMBER(SEARCH("${word}",${names}))`).join("+");
  return `IF(${isLeak},"",${table})`;
}

/**
 * The fan's curve on the sheet Fan, header row included: typed in A and B as the data sheet prints it, and beside it, as all
 * sheets read it, airflow and fan static pressure.
 */
export const CURVE_HEADER = 8;
export const CURVE_LAST = CURVE_HEADER + 15;
export const CURVE_USED = { airflow: "D", pressure: "E" } as const;
export const fanCurve = (frame: Frame): string =>
  frame.ref("fan", `$${CURVE_USED.airflow}$${CURVE_HEADER}:$${CURVE_USED.pressure}$${CURVE_LAST}`);

/** The cell on the sheet Flow that lists the runs whose gates are open now, as SOLVE takes them. */
export const OPEN_CELL = "$C$9";
export const openRuns = (frame: Frame): string => frame.ref("flow", OPEN_CELL);

/** The cell on the sheet Flow that says by which ducts and fan the sheets tell what flows, and its two words. */
export const SYSTEM_CELL = "$B$2";
export const ENTERED = "as entered";
export const CALIBRATED = "as calibrated";

/** SOLVE's answer on the sheet Flow: header row, first column, and the last row that it can fill (the fan's). */
export const FLOW_HEADER = 10;
export const FLOW_COLUMN = 2; // B; column A holds the gates
export const FLOW_LAST = FLOW_HEADER + 41;
export const FLOW_SAYS_CELL = "C3"; // what is wrong, in a sentence
export const FLOW_SEALED = "T"; // the column beside it of the airflows if all leaks were sealed, by a formula in its heading
export const FLOW_SEALED_CELL = `$${FLOW_SEALED}$${FLOW_HEADER}`;
export const FLOW_SYSTEM_CELL = "$A$3"; // by which ducts and fan it was solved; begins with LOOK where there is no answer

/** BUDGET's answer on the sheet Budget likewise. */
export const BUDGET_HEADER = 8;
export const BUDGET_COLUMN = 2; // B; column A holds the flags
export const BUDGET_LAST = BUDGET_HEADER + 41;

/**
 * Right of it: what each open hood asks for, what a gauge reads at the run's end, and for the sheet Runs the run's place in its
 * table, the check in words, and of a wrong run the row on that sheet.
 */
const besideBudget = (index: number): string => columnLetters(BUDGET_COLUMN + budgetColumns.length + index);
export const BUDGET_BESIDE = {
  asked: besideBudget(0),
  gauge: besideBudget(1),
  place: besideBudget(2),
  check: besideBudget(3),
  told: besideBudget(4), // what the answer says of a wrong run, or of what it waits for, without what the sheets say otherwise
  wrongRow: besideBudget(5),
} as const;
export const BUDGET_STOCK = columnLetters(BUDGET_COLUMN + budgetColumns.length + 10); // right of those columns: sizes that can be bought
export const BUDGET_UNSURE_COLUMN = BUDGET_COLUMN + budgetColumns.length + 13; // further right: how far what is asked for may be off
export const BUDGET_NONE_CELL = "$A$3"; // begins with LOOK where there is no answer
export const BUDGET_WRONG_CELL = "$C$3"; // what is wrong, in a sentence; blank where nothing is
export const BUDGET_NAMES = BUDGET_COLUMN + budgetColumns.length + 6; // the first of four columns by which runs are found
