import { togetherColumns } from "../../../reference/answerColumns";
import { columnLetters } from "../../address";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { fanCurve, runsColumn, runsTable } from "../layout";
import { answerCell, isMissing, isWhole, onceRunsAndCurve, torn } from "../parts/answerReferences";
import { curveInUse, runsInUse } from "../parts/inUse";
import { saysNote } from "../parts/notes";
import { spillOf } from "../parts/spill";
import { formatOf } from "../parts/units";
import { askedCell } from "./sizesAsked";
import {
  ALONE_ANSWER,
  GATHERED,
  GATHERED_LAST,
  MOST_ROW,
  TOGETHER_ANSWER,
  TOGETHER_CELL,
  VERDICTS,
} from "./sizesLayout";

const USUAL_GATES = 8; // pairs of more are too many sets for every change

/** Which machines can run together: every set of so many open gates, and in one line those that work. */
export function sizesTogether(frame: Frame): SheetCell[] {
  const { header, last, column } = TOGETHER_ANSWER;
  const most = askedCell(MOST_ROW);
  const gated = `COUNTA(${runsColumn(frame, "Gate")})`; // with its heading
  const asked = `IF(${most}="",IF(${gated}>${USUAL_GATES + 1},1,2),${most})`;
  const call = (open: string): string =>
    `DUCT.TOGETHER(${runsInUse(frame)},${curveInUse(frame)},${open},${frame.name("density")},${frame.name("units")})`;
  const waits = (open: string): string =>
    `IF(${gated}<2,"No run of the sheet ${frame.sheet("runs")} has a gate",${call(open)})`;
  const formats = togetherColumns.map(({ key, quantity }) => {
    if (key === "hoodShare" || key === "velocityShare") return "0";
    return quantity === null ? null : formatOf(frame, quantity);
  });
  const rows = Array.from({ length: last - header }, (_, index) => header + 1 + index);
  return [
    text(`A${header - 2}`, "Which machines can run together", "section"),
    text(
      `C${header - 2}`,
      `The ducts as they stand on the sheet ${frame.sheet("runs")}, with the fan: each set of open gates solved for.`,
      "note",
    ),
    ...spillOf(column, header, last, formats, onceRunsAndCurve(frame, waits(asked))),
    text(`${columnLetters(ALONE_ANSWER.column)}${header - 2}`, "Each machine alone", "section"),
    ...spillOf(ALONE_ANSWER.column, header, ALONE_ANSWER.last, formats, onceRunsAndCurve(frame, waits("1"))),
    ...rows.map((row) => gathered(row)),
    text(`${GATHERED}${header}`, "Those that work", "header"),
    text("A7", "Can run together", "label"),
    formula(
      TOGETHER_CELL.replaceAll("$", ""),
      `=IF(${isWhole(TOGETHER_ANSWER)},${inShort(frame)},${torn(frame, TOGETHER_ANSWER)})`,
      "total",
    ),
  ];
}

const works = (cell: string): string => `OR(${saysNote("worksTogether", cell)},${saysNote("worksAlone", cell)})`;

function gathered(row: number): SheetCell {
  const above = row === TOGETHER_ANSWER.header + 1 ? '""' : `$${GATHERED}${row - 1}`;
  const set = `SUBSTITUTE(${answerCell(TOGETHER_ANSWER, "open", row)},"; "," + ")`;
  const verdict = answerCell(TOGETHER_ANSWER, "verdict", row);
  return formula(
    `${GATHERED}${row}`,
    `=IF(${works(verdict)},${above}&IF(${above}="","",", ")&${set},${above}&"")`,
    "unit",
  );
}

/** It reads the inputs itself: a program without our functions else goes on with what was computed from its table before a change. */
function inShort(frame: Frame): string {
  const inputs = [runsTable(frame), fanCurve(frame), frame.name("density")];
  const { header, last } = TOGETHER_ANSWER;
  const cells = `$${VERDICTS}$${header + 1}:$${VERDICTS}$${last}`;
  const [first, open] = [`$A$${header}`, `$A$${header + 1}:$A$${last}`];
  const sets = `COUNTIF(${open},"?*")`;
  const further = `IF($A$${last}="",""," (of the first "&ROWS(${cells})&" sets)")`;
  const none = `"No set of those tried: too little air at a hood, or dust that settles. See row ${header} of the sheet Sizes."`;
  // without our functions LibreOffice counts cells that show errors
  return `IFERROR(IF(${isMissing(first, ...inputs)},"see A${header}",IF(${sets}=0,${first}&"",IF(${GATHERED_LAST}="",${none},${GATHERED_LAST})&${further})),"see A${header}")`;
}
