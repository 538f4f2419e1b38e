import type { Frame, SheetKey } from "../frame";
import { BUDGET_HEADER, BUDGET_LAST, CURVE_HEADER, CURVE_LAST, FLOW_HEADER, FLOW_LAST, runsColumn } from "../layout";

/** The answer of a whole-table formula: where it stands, as formulas on its own sheet and on others read it. */
export interface Answer {
  readonly sheet: SheetKey;
  readonly header: number; // its row; the formula stands in column B of it
  readonly last: number; // the last row that it can fill
}

export const BUDGET_ANSWER: Answer = { sheet: "budget", header: BUDGET_HEADER, last: BUDGET_LAST };
export const FLOW_ANSWER: Answer = { sheet: "flow", header: FLOW_HEADER, last: FLOW_LAST };

/** A column of it without its header; with a frame, as another sheet writes it. */
export function answerColumn({ sheet, header, last }: Answer, letter: string, frame?: Frame): string {
  const range = `$${letter}$${header + 1}:$${letter}$${last}`;
  return frame === undefined ? range : frame.ref(sheet, range);
}

/** What it says of the fan, whose row comes after the last filled row of the runs table. */
export const ofFan = (answer: Answer, letter: string, frame?: Frame): string =>
  `INDEX(${answerColumn(answer, letter, frame)},MATCH("Fan",${answerColumn(answer, "B", frame)},0))`;

const firstCell = ({ sheet, header }: Answer, frame?: Frame): string =>
  frame === undefined ? `$B$${header}` : frame.ref(sheet, `$B$${header}`);

/**
 * A formula that reads such an answer: blank while inputs are missing, and where the answer is an error it says where to
 * look. Without an answer there is no fan row to find, so a sum or a count of nothing never passes for a 0.
 */
export function fromAnswer(answer: Answer, code: string, frame?: Frame): string {
  const first = firstCell(answer, frame);
  const where = frame === undefined ? `B${answer.header}` : `${frame.sheet(answer.sheet)} B${answer.header}`;
  return `=IFERROR(IF(LEFT(${first},${FILL.length})="${FILL}","",IF(${ofFan(answer, "C", frame)}>=0,${code})),"see ${where}")`;
}

const FILL = "Fill in";

const noRuns = (frame: Frame): string => `COUNTA(${runsColumn(frame, "Run")})=0`;
const noCurve = (frame: Frame): string => `COUNT(${frame.ref("fan", `$A$${CURVE_HEADER + 1}:$A$${CURVE_LAST}`)})<2`;

/** A formula that waits, with a plain text, until there are runs. */
export const onceRuns = (frame: Frame, code: string): string =>
  `=IF(${noRuns(frame)},"${FILL} the sheet ${frame.sheet("runs")} first",${code})`;

/** The same until there are runs and two points of a fan's curve; where another cell says so already, it waits in silence. */
export function onceRunsAndCurve(frame: Frame, code: string, until: "says so" | "blank" = "says so"): string {
  const words = until === "blank" ? "" : `${FILL} the sheets ${frame.sheet("runs")} and ${frame.sheet("fan")} first`;
  return `=IF(OR(${noRuns(frame)},${noCurve(frame)}),"${words}",${code})`;
}
