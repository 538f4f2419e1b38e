import { cellAddress, columnLetters } from "../address";
import type { Frame } from "./frame";

/** Where things stand that more than one sheet refers to. */

/** The runs table on the sheet Runs: its header row, and forty rows under it. Column A holds the checks. */
export const RUNS_HEADER = 8;
export const RUNS_FIRST = RUNS_HEADER + 1;
export const RUNS_LAST = RUNS_HEADER + 40;
export const RUNS_COLUMN = 2; // B

/** Headers of the runs table without their units, in order. The leaks stand last, so that a narrower range leaves them out. */
export const runColumns = [
  "Run",
  "To",
  "Airflow",
  "Diameter",
  "Length",
  "Flex",
  "Hood",
  "Fittings",
  "Gate",
  "Material",
  "Device loss",
  "Device airflow",
  "Device exponent",
  "Device clean loss",
  "Dust",
  "Side",
  "Leak",
  "Leak open",
  "Leak shut",
] as const;

export type RunColumn = (typeof runColumns)[number];

const columnOf = (column: RunColumn): number => RUNS_COLUMN + runColumns.indexOf(column);

/** A column of the runs table without its header, on the sheet Runs itself. */
export const runsColumnRange = (column: RunColumn): string =>
  `$${columnLetters(columnOf(column))}$${RUNS_FIRST}:$${columnLetters(columnOf(column))}$${RUNS_LAST}`;

/** One column of the runs table as a formula on any sheet writes it. */
export const runsColumn = (frame: Frame, column: RunColumn): string => frame.ref("runs", runsColumnRange(column));

export const runCell = (column: RunColumn, row: number): string => cellAddress(columnOf(column), row);

const tableTo = (column: RunColumn): string =>
  `$${columnLetters(RUNS_COLUMN)}$${RUNS_HEADER}:$${columnLetters(columnOf(column))}$${RUNS_LAST}`;

/** The whole runs table as a formula on any sheet writes it, and the same without its leaks. */
export const runsTable = (frame: Frame): string => frame.ref("runs", tableTo("Leak shut"));
export const runsWithoutLeaks = (frame: Frame): string => frame.ref("runs", tableTo("Side"));

/** The fan's curve on the sheet Fan: airflow and fan static pressure, header row included. */
export const CURVE_HEADER = 8;
export const CURVE_LAST = CURVE_HEADER + 15;
export const fanCurve = (frame: Frame): string => frame.ref("fan", `$A$${CURVE_HEADER}:$B$${CURVE_LAST}`);

/** The cell on the sheet Flow that lists the runs whose gates are open now, as SOLVE takes them. */
export const OPEN_CELL = "$C$9";
export const openRuns = (frame: Frame): string => frame.ref("flow", OPEN_CELL);

/** SOLVE's answer on the sheet Flow: header row, first column, and the last row that it can fill (the fan's). */
export const FLOW_HEADER = 10;
export const FLOW_COLUMN = 2; // B; column A holds the gates
export const FLOW_LAST = FLOW_HEADER + 41;

/** BUDGET's answer on the sheet Budget likewise. */
export const BUDGET_HEADER = 8;
export const BUDGET_COLUMN = 2; // B; column A holds the flags
export const BUDGET_LAST = BUDGET_HEADER + 41;
