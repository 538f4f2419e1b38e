import { type SolveKey, sureGainColumns, uncertaintyColumns } from "../../../reference/answerColumns";
import { scenarioColumnsFor } from "../../../reference/columnsOfScenarios";
import { inputErrors } from "../../../reference/inputErrors";
import { columnLetters, placeOf } from "../../address";
import { FLOW_HEADER, FLOW_LAST, FLOW_SEALED, RUNS_HEADER, RUNS_LAST } from "../layout";
import { type Answer, answerLetters, FLOW_ANSWER } from "../parts/answerReferences";

/**
 * Where things stand on the sheet Flow. SOLVE's answer has a gate before each run; beside it, in the same rows, what each
 * hood gets and what sealing would give; below it the scenarios; and last the gains, whose length nobody knows.
 */
export const FLOW_FIRST = FLOW_HEADER + 1;
export const RUN_LAST = FLOW_LAST - 1; // the last row that a run can fill: the fan follows the last run

/** The rows that runs can fill. */
export const FLOW_ROWS = Array.from({ length: RUN_LAST - FLOW_FIRST + 1 }, (_, index) => FLOW_FIRST + index);

/** The cells before them in which gates are typed. */
export const GATES = `$A$${FLOW_FIRST}:$A$${RUN_LAST}`;

/** A column of SOLVE's answer where runs can stand, on the sheet itself. */
export function runRows(key: SolveKey): string {
  const letters = answerLetters(FLOW_ANSWER, key);
  return `$${letters}$${FLOW_FIRST}:$${letters}$${RUN_LAST}`;
}

/** Columns beside the answer. Those between are left to its notes, which run over them. */
export const beside = {
  wants: "Q",
  gets: "R",
  share: "S",
  sealed: FLOW_SEALED,
  gains: "U",
  inWords: "V", // the run's airflow with its ±
  hoodNumber: "W", // 1, 2, 3 ... down the open hoods
  unheaded: "X", // row by row of the runs table: name of the run if it has a gate that heads no scenario
  open: "Y", // likewise: name of the run if its gate is open
  settles: "Z", // name of the run if dust settles in it
  place: "AA", // where the runs table has the run of this name
  gateTrouble: "AB", // what is wrong with the words in column A of this row
  told: "AC", // those words as names are compared
} as const;

const NOTE = placeOf(`${answerLetters(FLOW_ANSWER, "note")}1`).column;
/** The notes of the answer and the blank columns that a long one runs over, counted from 1: paper shows them on one page. */
export const NOTES_RUN_OVER = { first: NOTE, last: NOTE + 6 } as const;

export const NAMES = 30; // AD, the first of the four columns by which runs are found

export const ERRORS_COLUMN = 35; // AI, the first of the three columns of how far inputs may be off
/** The errors of inputs that stand there: those of readings alone are told beside each reading. */
export const errorsShown = inputErrors.filter(({ ofReadings }) => ofReadings === undefined);
export const ERRORS_LAST = FLOW_HEADER + errorsShown.length;
export const ERRORS = `$${columnLetters(ERRORS_COLUMN)}$${FLOW_HEADER}:$${columnLetters(ERRORS_COLUMN + 1)}$${ERRORS_LAST}`;
export const UNCERTAINTY_ANSWER = {
  sheet: "flow",
  column: 39, // AM
  header: FLOW_HEADER,
  last: FLOW_LAST,
  columns: uncertaintyColumns,
} as const satisfies Answer;

export type Beside = keyof typeof beside;

/** A cell or a column of those. */
export const besideCell = (column: Beside, row: number): string => `$${beside[column]}${row}`;
export const besideColumn = (column: Beside): string =>
  `$${beside[column]}$${FLOW_FIRST}:$${beside[column]}$${RUN_LAST}`;

export const SETS_COLUMN = 2; // B: the scenario's name; the gates follow
export const MOST_GATES = 10;
export const MOST_SETS = 6;
export const SETS = FLOW_LAST + 6; // row of their heading
export const SETS_LAST = SETS + MOST_SETS;
/** The cells over the marks: a run's name each. */
export const headings = `$${columnLetters(SETS_COLUMN + 1)}$${SETS}:$${columnLetters(SETS_COLUMN + MOST_GATES)}$${SETS}`;
export const SCENARIOS = SETS_LAST + 3; // row of the header of their answer
export const SCENARIOS_LAST = SCENARIOS + MOST_SETS;
/** The answer's last column where every run is a hood. */
export const SCENARIOS_WIDEST =
  SETS_COLUMN + scenarioColumnsFor(Array.from({ length: RUNS_LAST - RUNS_HEADER })).length - 1;
export const SLOWEST = SCENARIOS_LAST + 3; // row of the header of the slowest runs

export const GAINS_TITLE = SLOWEST + MOST_SETS + 3;
export const WISH_CELL = `$B$${GAINS_TITLE + 1}`;
export const HELPED_CELL = `$B$${GAINS_TITLE + 2}`;
export const GAINS = GAINS_TITLE + 4; // row of the header of GAINS' answer
export const GAINS_SAY = `$C$${GAINS - 1}`; // what is to know of them
export const GAINS_LAST = GAINS + 30;
export const GAINS_ANSWER = {
  sheet: "flow",
  column: 1,
  header: GAINS,
  last: GAINS_LAST,
  columns: sureGainColumns,
} as const satisfies Answer;
