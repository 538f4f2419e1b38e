import { type AnswerColumn, budgetColumns, solveColumns } from "../../../reference/answerColumns";
import { placeOfColumn } from "../../../reference/columnsOfAnswers";
import { cellAddress, columnLetters } from "../../address";
import type { Frame } from "../frame";
import {
  BUDGET_COLUMN,
  BUDGET_HEADER,
  BUDGET_LAST,
  BUDGET_NONE_CELL,
  BUDGET_WRONG_CELL,
  CURVE_HEADER,
  CURVE_LAST,
  CURVE_USED,
  FLOW_COLUMN,
  FLOW_HEADER,
  FLOW_LAST,
  FLOW_SAYS_CELL,
  FLOW_SEALED_CELL,
  FLOW_SYSTEM_CELL,
  runsColumn,
} from "../layout";
import type { SheetKey } from "../../sheetKeys";
import { LOOK, saysLook } from "./look";

/** The answer of a whole-table formula, as the sheets have it: where it stands, as formulas on its own sheet and on others read it. */
export interface Answer {
  readonly sheet: SheetKey;
  readonly column: number; // its first one
  readonly header: number; // its row; the formula stands in the first column of it
  readonly last: number; // the last row that it can fill
  readonly columns: readonly AnswerColumn[];
  readonly says?: string; // the cell that says what is wrong where it lacks numbers; else the formula's own
  readonly tornSays?: string; // the cell that says so where the table is not whole; else the same
  readonly beside?: readonly string[]; // formulas that fill a column of their own beside it
  readonly guard?: string; // a cell that begins with LOOK where it has no answer, and that reads all its inputs
}

type KeyOf<Some extends Answer> = Some["columns"][number]["key"];

export const BUDGET_ANSWER = {
  sheet: "budget",
  column: BUDGET_COLUMN,
  header: BUDGET_HEADER,
  last: BUDGET_LAST,
  columns: budgetColumns,
  says: BUDGET_WRONG_CELL.replaceAll("$", ""),
  guard: BUDGET_NONE_CELL,
} as const satisfies Answer;

export const FLOW_ANSWER = {
  sheet: "flow",
  column: FLOW_COLUMN,
  header: FLOW_HEADER,
  last: FLOW_LAST,
  columns: solveColumns,
  tornSays: FLOW_SAYS_CELL,
  beside: [FLOW_SEALED_CELL],
  guard: FLOW_SYSTEM_CELL,
} as const satisfies Answer;

/** The cell of the formula itself, on its own sheet. */
export const headOf = ({ column, header }: Answer): string => `$${columnLetters(column)}$${header}`;

/**
 * Whether a formula has no answer. A program without our functions keeps what was computed from an answer, also after a change, so this reads
 * every input itself, and what reads the answer asks this.
 *
 * @param head the cell of the formula
 * @param inputs all that it reads, or a cell that reads all of it
 */
export const isMissing = (head: string, ...inputs: readonly string[]): string =>
  `AND(ISERROR(${head}),COUNTA(${inputs.join(",")})>0)`;

/** What is said then. */
export const noAnswer = (frame: Frame, answer: Answer): string =>
  `"${LOOK} ${frame.sheet(answer.sheet)} ${headOf(answer).replaceAll("$", "")} is an error: trust no number here"`;

/** Each column's letters. */
export const answerLetters = <Some extends Answer>({ column, columns }: Some, key: KeyOf<Some>): string =>
  columnLetters(column + placeOfColumn(columns, key));

/** A column of it with its header, on its own sheet: so that a row inserted right below the header, where the answer goes on standing, belongs to it. */
export function headedColumn<Some extends Answer>(answer: Some, key: KeyOf<Some>, frame?: Frame): string {
  const letters = answerLetters(answer, key);
  const range = `$${letters}$${answer.header}:$${letters}$${answer.last}`;
  return frame === undefined ? range : frame.ref(answer.sheet, range);
}

/** Whether its formula still stands: values pasted over all of an answer look like it, and no change reaches them. */
export function stands(answer: Answer, frame?: Frame): string {
  const cells = [headOf(answer), ...(answer.beside ?? [])];
  const all = cells.map((at) => `ISFORMULA(${frame === undefined ? at : frame.ref(answer.sheet, at)})`);
  return all.length === 1 ? all.join() : `AND(${all.join(",")})`;
}

/**
 * Whether the table is whole: a row or column that is inserted in it, deleted or moved to another place moves all that reads it, while
 * the answer fills the same cells as before, so that a sum would be that of another column, or lack a run. Cells of one column
 * that are inserted or deleted move what reads that column alone, so both ends of each are held against those of the table.
 */
export function isWhole(answer: Answer, frame?: Frame): string {
  const { sheet, column, header, last, columns } = answer;
  const ref = (at: string): string => (frame === undefined ? at : frame.ref(sheet, at));
  const at = (place: number, row: number): string => ref(`$${columnLetters(column + place)}$${row}`);
  const from = at(0, header);
  const to = at(columns.length - 1, last);
  const inPlace = columns.map((_, place) => {
    const [head, end] = [at(place, header), at(place, last)];
    const isLevel = end === to ? "" : `,ROW(${end})=ROW(${to})`;
    return head === from ? isLevel : `,COLUMN(${head})-COLUMN(${from})=${place},ROW(${head})=ROW(${from})${isLevel}`;
  });
  return `IFERROR(AND(${stands(answer, frame)},ROW(${to})-ROW(${from})=${last - header}${inPlace.join("")}),FALSE)`;
}

/** What is said where it is not. */
export function torn(frame: Frame, ...answers: readonly [Answer, ...Answer[]]): string {
  const moved = `"${LOOK} a row or column was added, deleted or moved in ${tableOf(frame, answers[0])}: undo that"`;
  const all = answers.map((answer) => stands(answer, frame)).join(",");
  return `IF(IFERROR(AND(${all}),TRUE),${moved},${frozen(frame, answers[0])})`;
}

/** What is said where values stand in the place of its formula, or in its way. */
export const frozen = (frame: Frame, answer: Answer): string => typedInto(tableOf(frame, answer));

export const typedInto = (table: string): string =>
  `"${LOOK} something was typed or pasted into ${table}, which formulas fill: undo that"`;

const tableOf = (frame: Frame, { sheet, header }: Answer): string => `${frame.sheet(sheet)}'s table (row ${header} on)`;

/** A column of it without its header; with a frame, as another sheet writes it. */
export function answerColumn<Some extends Answer>(answer: Some, key: KeyOf<Some>, frame?: Frame): string {
  const letters = answerLetters(answer, key);
  const range = `$${letters}$${answer.header + 1}:$${letters}$${answer.last}`;
  return frame === undefined ? range : frame.ref(answer.sheet, range);
}

/** One cell of it by its row; with a frame, as another sheet writes it. */
export function answerCell<Some extends Answer>(answer: Some, key: KeyOf<Some>, row: number, frame?: Frame): string {
  const letters = answerLetters(answer, key);
  return frame === undefined ? `$${letters}${row}` : frame.ref(answer.sheet, `$${letters}$${row}`);
}

/** What it says of the fan, whose row comes after the last filled row of the runs table. */
export const ofFan = <Some extends Answer>(answer: Some, key: KeyOf<Some>, frame?: Frame): string =>
  `INDEX(${answerColumn(answer, key, frame)},MATCH("Fan",${answerColumn(answer, "run", frame)},0))`;

/**
 * A formula that reads such an answer: blank while inputs are missing, and where the answer is an error it says where to
 * look. Without an answer there is no fan row to find, so a sum or a count of nothing never passes for a 0.
 *
 * @param here a cell of the formula's own sheet that says what is wrong, too
 */
export function fromAnswer(answer: Answer, code: string, frame?: Frame, here?: string): string {
  const onIt = (cell: string): string => (frame === undefined ? cell : frame.ref(answer.sheet, cell));
  const first = onIt(headOf(answer));
  const says = answer.says ?? cellAddress(answer.column, answer.header);
  const there = (cell: string): string => (frame === undefined ? cell : `${frame.sheet(answer.sheet)} ${cell}`);
  const where = here ?? there(says);
  const tornSaid = here ?? there(answer.tornSays ?? says);
  const read = `IF(LEFT(${first},${FILL.length})="${FILL}","",IF(${ofFan(answer, "airflow", frame)}>=0,${code}))`;
  const guarded = answer.guard === undefined ? read : `IF(${saysLook(onIt(answer.guard))},"see ${where}",${read})`;
  return `=IFERROR(IF(NOT(${isWhole(answer, frame)}),"see ${tornSaid}",${guarded}),"see ${where}")`;
}

/** How an answer begins that waits for inputs. */
export const FILL = "Fill in";

/** The header counts. */
const noRuns = (frame: Frame): string => `COUNTA(${runsColumn(frame, "Run")})<2`;
const noCurve = (frame: Frame): string =>
  `COUNT(${frame.ref("fan", `$${CURVE_USED.airflow}$${CURVE_HEADER + 1}:$${CURVE_USED.airflow}$${CURVE_LAST}`)})<2`;

/** A formula that waits, with a plain text, until there are runs. */
export const onceRuns = (frame: Frame, code: string): string =>
  `=IF(${noRuns(frame)},"${FILL} the sheet ${frame.sheet("runs")} first",${code})`;

/** The same until there are runs and two points of a fan's curve; where another cell says so already, it waits in silence. */
export function onceRunsAndCurve(frame: Frame, code: string, until: "says so" | "blank" = "says so"): string {
  const words = until === "blank" ? "" : `${FILL} the sheets ${frame.sheet("runs")} and ${frame.sheet("fan")} first`;
  return `=IF(OR(${noRuns(frame)},${noCurve(frame)}),"${words}",${code})`;
}
