import { solveColumns, type SolveKey } from "../../../reference/answerColumns";
import { placeOfColumn } from "../../../reference/columnsOfAnswers";
import { placeOf } from "../../address";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { FLOW_COLUMN, FLOW_HEADER, FLOW_LAST, FLOW_SYSTEM_CELL } from "../layout";
import { answerCell, FLOW_ANSWER, onceRunsAndCurve } from "../parts/answerReferences";
import { numberOfRun, plainName } from "../parts/byName";
import { saysLook } from "../parts/look";
import { saysNote } from "../parts/notes";
import type { JoinsOfRuns, RunsByName } from "../parts/runsByName";
import { spillOf } from "../parts/spill";
import { formatOf, headingIn, SHARE } from "../parts/units";
import { quotedCall, solveCall } from "./flowCalls";
import { beside, type Beside, besideCell, FLOW_ROWS } from "./flowLayout";

/** What SOLVE says of each run. */
export function flowAnswer(frame: Frame): SheetCell[] {
  const formats = solveColumns.map(({ key, quantity }) =>
    quantity === null ? null : formatOf(frame, key === "leak" ? "leak" : quantity),
  );
  return [
    ...spillOf(FLOW_COLUMN, FLOW_HEADER, FLOW_LAST, formats, onceRunsAndCurve(frame, solveCall(frame))),
    text(`C${FLOW_LAST + 1}`, `One formula fills this table: =${quotedCall.solve(frame)}`, "note"),
  ];
}

/** What each open hood gets of what it wants, what sealing every leak would give it, and the numbers that lists go by. */
export function hoodColumns(frame: Frame, runs: RunsByName, joins: JoinsOfRuns): SheetCell[] {
  const { wants, gets, share, sealed, gains, hoodNumber, settles, place } = beside;
  const head = (letter: string, words: string): SheetCell =>
    formula(`${letter}${FLOW_HEADER}`, headingIn(frame, words, "airflow"), "numberHeader");
  const sealedAnswer = `INDEX(${solveCall(frame, "sealed")},0,${placeOfColumn(solveColumns, "airflow") + 1})`;
  return [
    text(`${wants}2`, "What each open hood gets, and what sealing every leak would give it", "section"),
    head(wants, "Hood wants"),
    head(gets, "Hood gets"),
    text(`${share}${FLOW_HEADER}`, "Share of wanted", "numberHeader"),
    text(`${sealed}${FLOW_HEADER - 1}`, "If sealed", "numberHeader"),
    ...spillOf(
      placeOf(`${sealed}1`).column,
      FLOW_HEADER,
      FLOW_LAST,
      [formatOf(frame, "airflow")],
      onceRunsAndCurve(frame, sealedAnswer, "blank"),
    ),
    head(gains, "Hood gains"),
    text(`${hoodNumber}${FLOW_HEADER - 1}`, "For the lists below and on other sheets", "note"),
    text(`${hoodNumber}${FLOW_HEADER}`, "Hood no.", "numberHeader"),
    text(`${settles}${FLOW_HEADER}`, "Settles", "header"),
    text(`${place}${FLOW_HEADER}`, "Row of the table", "numberHeader", {
      note: "Where the runs table has the run of this name, its header being row 1.",
    }),
    ...FLOW_ROWS.flatMap((row) => hoodRow(frame, row, runs, joins)),
  ];
}

function hoodRow(frame: Frame, row: number, runs: RunsByName, joins: JoinsOfRuns): SheetCell[] {
  const cell = (column: Beside): string => besideCell(column, row);
  const at = (column: Beside): string => `${beside[column]}${row}`;
  const answer = (key: SolveKey): string => answerCell(FLOW_ANSWER, key, row);
  const run = answer("run");
  const ofARun = (code: string): string => `=IF(OR(${run}="",${run}="Fan"),"",${code})`;
  const whole = { format: formatOf(frame, "airflow") };
  // an end that is open and reached: SOLVE gives no suction for what lies beyond a shut gate or after the fan
  const wanted = numberOfRun(frame, "Airflow", cell("place"));
  const isOpenHood = `AND(${joins.joining(cell("place"))}=0,${answer("gate")}<>"shut",${answer("staticSuction")}<>"")`;
  const nextNumber = `MAX(0,$${beside.hoodNumber}$${FLOW_HEADER}:$${beside.hoodNumber}${row - 1})+1`;
  return [
    formula(at("wants"), ofARun(`IF(AND(${isOpenHood},NOT(${saysLook(FLOW_SYSTEM_CELL)})),${wanted},"")`), "result", whole), // prettier-ignore
    formula(at("gets"), ofARun(`IF(${isOpenHood},${answer("airflow")}-${answer("leak")},"")`), "result", whole),
    formula(at("share"), `=IF(SUM(${cell("wants")})>0,${cell("gets")}/${cell("wants")},"")`, "result", {
      format: SHARE,
    }),
    formula(at("gains"), `=IFERROR(IF(${cell("gets")}="","",${cell("sealed")}-${cell("gets")}),"")`, "result", {
      format: formatOf(frame, "leak"),
    }),
    formula(at("hoodNumber"), `=IF(${cell("gets")}="","",${nextNumber})`, "unit"),
    formula(at("settles"), `=IF(${saysNote("settles", answer("note"))},${run}&"; ","")`, "unit"),
    formula(at("place"), ofARun(runs.placeOf(plainName(run))), "unit"),
  ];
}
