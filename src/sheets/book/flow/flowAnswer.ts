import { solveColumns, type SolveKey } from "../../../reference/answerColumns";
import { placeOfColumn } from "../../../reference/columnsOfAnswers";
import type { ShownRunColumn } from "../../../reference/runColumns";
import { placeOf } from "../../address";
import { formula, input, text } from "../../cells";
import type { ChoiceList, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { FLOW_COLUMN, FLOW_HEADER, FLOW_LAST, OPEN_CELL, runCell, runsColumn } from "../layout";
import { answerCell, FLOW_ANSWER, onceRunsAndCurve } from "../parts/answers";
import { saysNote } from "../parts/notes";
import { spillOf } from "../parts/spill";
import { formatOf, headingIn, SHARE } from "../parts/units";
import { solveCall } from "./flowCalls";
import type { FlowContents } from "./flowContents";
import { beside, type Beside, besideCell, FLOW_FIRST, RUN_LAST, runsRow } from "./flowLayout";

const OPEN_NOTE = "The runs whose gates are open, as the formulas below take them. Worked out from column A.";

export const gateList: ChoiceList = { range: `A${FLOW_FIRST}:A${RUN_LAST}`, choices: ["open", "shut"], strict: true };

const rows = Array.from({ length: RUN_LAST - FLOW_FIRST + 1 }, (_, index) => FLOW_FIRST + index);

/** The gates, and beside each what SOLVE says of its run. */
export function flowAnswer(frame: Frame, gates: FlowContents["gates"]): SheetCell[] {
  const formats = solveColumns.map(({ key, quantity }) =>
    quantity === null ? null : formatOf(frame, key === "leak" ? "leak" : quantity),
  );
  const gateNote = `open or shut, for this sheet only. Blank: as on the sheet ${frame.sheet("runs")}. It acts where the run has a gate there.`;
  const listed = rows.map((row) => besideCell("open", row)).join("&");
  return [
    text(`B${FLOW_HEADER - 1}`, "Gates open now", "label"),
    formula(
      OPEN_CELL.replaceAll("$", ""),
      `=IF(COUNTA(${runsColumn(frame, "Gate")})=0,"",IF(${listed}="","none",${listed}))`,
      "result",
      { note: OPEN_NOTE },
    ),
    text(`A${FLOW_HEADER}`, "Gate", "header", { note: gateNote }),
    ...spillOf(FLOW_COLUMN, FLOW_HEADER, FLOW_LAST, formats, onceRunsAndCurve(frame, solveCall(frame))),
    text(`C${FLOW_LAST + 1}`, `One formula fills this table: =${solveCall(frame)}`, "note"),
    ...rows.map((row, index) => input(`A${row}`, gates[index] ?? null)),
  ];
}

/** What each open hood gets of what it wants, what sealing every leak would give it, and the numbers that lists go by. */
export function hoodColumns(frame: Frame): SheetCell[] {
  const { wants, gets, share, sealed, gains, hoodNumber, gateNumber, open, settles } = beside;
  const head = (letter: string, words: string): SheetCell =>
    formula(`${letter}${FLOW_HEADER}`, headingIn(frame, words, "airflow"), "numberHeader");
  const sealedAnswer = `INDEX(${solveCall(frame, "sealed")},0,${placeOfColumn(solveColumns, "airflow") + 1})`;
  return [
    text(`${wants}4`, "What each open hood gets, and what sealing every leak would give it", "section"),
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
    text(`${gateNumber}${FLOW_HEADER}`, "Gate no.", "numberHeader"),
    text(`${open}${FLOW_HEADER}`, "Open now", "header"),
    text(`${settles}${FLOW_HEADER}`, "Settles", "header"),
    ...rows.flatMap((row) => hoodRow(frame, row)),
  ];
}

function hoodRow(frame: Frame, row: number): SheetCell[] {
  const onRuns = (column: ShownRunColumn): string => frame.ref("runs", runCell(column, runsRow(row)));
  const cell = (column: Beside): string => besideCell(column, row);
  const at = (column: Beside): string => `${beside[column]}${row}`;
  const answer = (key: SolveKey): string => answerCell(FLOW_ANSWER, key, row);
  const whole = { format: formatOf(frame, "airflow") };
  // an end that is open and reached: SOLVE gives no suction for what lies beyond a shut gate or after the fan
  const isOpenHood = `AND(${onRuns("Run")}<>"",COUNTIF(${runsColumn(frame, "To")},${onRuns("Run")})=0,${answer("gate")}<>"shut",${answer("staticSuction")}<>"")`;
  const state = `IF($A${row}="",${onRuns("Gate")},$A${row})`;
  const nextNumber = (column: Beside): string =>
    `MAX(0,$${beside[column]}$${FLOW_HEADER}:$${beside[column]}${row - 1})+1`;
  return [
    formula(at("wants"), `=IF(${isOpenHood},${onRuns("Airflow")},"")`, "result", whole),
    formula(at("gets"), `=IF(${isOpenHood},${answer("airflow")}-${answer("leak")},"")`, "result", whole),
    formula(at("share"), `=IF(SUM(${cell("wants")})>0,${cell("gets")}/${cell("wants")},"")`, "result", {
      format: SHARE,
    }),
    formula(at("gains"), `=IFERROR(IF(${cell("gets")}="","",${cell("sealed")}-${cell("gets")}),"")`, "result", {
      format: formatOf(frame, "leak"),
    }),
    formula(at("hoodNumber"), `=IF(${cell("gets")}="","",${nextNumber("hoodNumber")})`, "unit"),
    formula(
      at("gateNumber"),
      `=IF(OR(${onRuns("Run")}="",${onRuns("Gate")}=""),"",${nextNumber("gateNumber")})`,
      "unit",
    ),
    formula(at("open"), `=IF(OR(${onRuns("Gate")}="",${state}="shut"),"",${onRuns("Run")}&"; ")`, "unit"),
    formula(at("settles"), `=IF(${saysNote("settles", answer("note"))},${answer("run")}&"; ","")`, "unit"),
  ];
}
