import { markOf } from "../../../reference/notes";
import type { Frame } from "../frame";
import { BUDGET_BESIDE, BUDGET_HEADER, BUDGET_LAST, RUNS_COLUMN, RUNS_HEADER } from "../layout";
import { answerCell, answerColumn, BUDGET_ANSWER, frozen, isWhole, ofFan, torn } from "../parts/answerReferences";
import { farSaid, howManyFar } from "../parts/farAcross";
import { goneColumns } from "../parts/goneColumns";
import { saysNote } from "../parts/notes";
import { AIR_SAID } from "../start/startLayout";
import { columnLetters } from "../../address";
import { LOOK, saysLook } from "../parts/look";

/**
 * What is wrong with runs, in the words of the answer's notes. A formula cannot read the sentence of an error, so BUDGET says
 * it as a text, too; there rows are counted from the headings, and here they are those of the sheet Runs.
 */

const FIRST = BUDGET_HEADER + 1;
const within = (letters: string): string => `$${letters}$${FIRST}:$${letters}$${BUDGET_LAST - 1}`;
const { check: CHECK, told: TOLD, wrongRow: WRONG_ROW, place: PLACE } = BUDGET_BESIDE;
const QUOTE = "CHAR(34)"; // a quote within a text is written otherwise in the grid in the browser
const airOf = (row: number): string => answerCell(BUDGET_ANSWER, "airflow", row);

/** Whether numbers stand in the answer's way: where there is none, they are not its own. */
export const isBlocked = (frame?: Frame): string =>
  `AND(ISERROR(${frame === undefined ? FIRST_CELL : frame.ref("budget", FIRST_CELL)}),COUNT(${answerColumn(BUDGET_ANSWER, "airflow", frame)})>0)`;

/** A run that is wrong, not one that waits for another. A copy that cannot compute has the sentence alone, and no header. */
export const isWrong = (row: number): string =>
  `IF(ISERROR(${FIRST_CELL}),${answerCell(BUDGET_ANSWER, "note", row)}<>"",ISERR(${airOf(row)}))`;
const FIRST_CELL = `$${columnLetters(BUDGET_ANSWER.column)}$${BUDGET_HEADER}`;

/** A run that goes to one that is not there. */
const isNotJoined = (row: number): string => saysNote("waitsForMissing", answerCell(BUDGET_ANSWER, "note", row));
const WAITING = "waiting for ";

/** Which row of the runs table the answer's row is about, its header being row 1. */
export const rowOfTable = `(ROW()-ROW(${FIRST_CELL})+1)`;

/** The sentence of a wrong run without its own name and row, or what a run waits for. */
export function told(row: number): string {
  const note = answerCell(BUDGET_ANSWER, "note", row);
  const run = answerCell(BUDGET_ANSWER, "run", row);
  const its = `" (row "&${rowOfTable}&")"`;
  const own = [`" of run "&${QUOTE}&TRIM(${run})&${QUOTE}&${its}`, its, `" of row "&${rowOfTable}`];
  const sentence = own.reduce((text, words) => `SUBSTITUTE(${text},${words},"")`, note);
  const mark = markOf("waits");
  const missing = `MID(${note},SEARCH("${mark}",${note})+${mark.length + 1},255)`;
  const name = `SUBSTITUTE(SUBSTITUTE(${missing},"run "&${QUOTE},${QUOTE}),${QUOTE},"")`;
  return `=IF(${isWrong(row)},${sentence},IF(${saysNote("waits", note)},${name},""))`;
}

/** What stands beside the run on the sheet Runs, where the answer has its numbers: `usual`. */
export function checkOf(frame: Frame, row: number, usual: string): string {
  const words = `$${TOLD}${row}`;
  const waiting = `IF(${words}="","no check: a column is gone","${WAITING}"&LEFT(${words},FIND(" (row ",${words}&" (row ")-1))`;
  const notThere = `IF(${isNotJoined(row)},"; "&${waiting},"")`;
  return `IF(${isWrong(row)},${rowsOfSheet(frame, words)},IF(ISERROR(${airOf(row)}),${waiting},IFERROR(${usual}&${notThere},${waiting})))`;
}

/** Another run that the sentence names stands in another row of the sheet than of the table. */
function rowsOfSheet(frame: Frame, words: string): string {
  const start = `FIND("(row ",${words})+5`;
  const end = `FIND(")",${words},${start})`;
  const row = `MID(${words},${start},${end}-(${start}))+${aboveTable(frame)}`;
  return `IFERROR(REPLACE(${words},${start},${end}-(${start}),${row}),${words})`;
}

const aboveTable = (frame: Frame): string =>
  `ROW(${frame.ref("runs", `$${columnLetters(RUNS_COLUMN)}$${RUNS_HEADER}`)})-1`;

/** The row on the sheet Runs of a run that is to be mended. */
export const wrongRow = (frame: Frame, row: number): string =>
  `=IF(OR(${isWrong(row)},${isNotJoined(row)}),$${PLACE}${row}+${aboveTable(frame)},"")`;

/** All of it in a sentence: the first run to mend and how many there are, or what else the fan waits for. */
export function headline(frame: Frame): string {
  const rows = within(WRONG_ROW);
  const ofFirst = (letters: string): string => `INDEX(${within(letters)},MATCH(MIN(${rows}),${rows},0))`;
  const run = `TRIM(${ofFirst(columnLetters(BUDGET_ANSWER.column))})`;
  const said = ofFirst(CHECK);
  const why = `IFERROR(MID(${said},FIND("${WAITING}",${said}),255),${said})`;
  const more = `IF(COUNT(${rows})>1,". Rows to mend: "&COUNT(${rows}),"")`;
  const row = `"${frame.sheet("runs")} row "&MIN(${rows})&IF(${run}="","",", "&${run})&": "`;
  const ofNoRow = `AND(ISERROR(${FIRST_CELL}),${run}="")`; // a copy tells in its first row what no row is to blame for
  const wrong = `"${LOOK} "&IF(${ofNoRow},"",${row})&${why}&${more}`;
  const note = ofFan(BUDGET_ANSWER, "note");
  const fan = `"${LOOK} the fan "&LEFT(${note},FIND(" (row ",${note}&" (row ")-1)`;
  const waits = `IF(ISERROR(${ofFan(BUDGET_ANSWER, "pathLoss")}),${fan},${goneColumns(frame)})`;
  const whole = `"${LOOK} select ${frame.sheet("budget")} B${BUDGET_HEADER} to read what is wrong"`;
  const ofRuns = `IFERROR(IF(COUNT(${rows})>0,${wrong},IF(ISERROR(${FIRST_CELL}),${whole},${waits})),"")`;
  const ofUnits = `IF(${howManyFar(frame)}>0,${farSaid(frame)},${ofRuns})`; // first, since wrong runs come of it
  const words = frame.has("start") ? ofAir(frame, ofUnits) : ofUnits;
  const told = `IF(${isBlocked()},${frozen(frame, BUDGET_ANSWER)},${words})`;
  return `=IF(${isWhole(BUDGET_ANSWER)},${told},${torn(frame, BUDGET_ANSWER)})`;
}

/** What the sheet Start says of the density comes first: it makes every number, or all of them errors. */
function ofAir(frame: Frame, ofRuns: string): string {
  const said = frame.ref("start", AIR_SAID);
  return `IF(${saysLook(said)},"${LOOK} ${frame.sheet("start")}: "&MID(${said},${LOOK.length + 2},255),${ofRuns})`;
}
