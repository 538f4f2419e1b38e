import { sureGainColumns } from "../../../reference/answerColumns";
import { placeOfColumn } from "../../../reference/columnsOfAnswers";
import { ENOUGH_AIR } from "../../../reference/noteLimits";
import { columnLetters, placeOf } from "../../address";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { FLOW_HEADER } from "../layout";
import { answerLetters, FLOW_ANSWER, onceRunsAndCurve } from "../parts/answerReferences";
import { spillOf } from "../parts/spill";
import { formatOf } from "../parts/units";
import { quotedCall, gainsCall } from "./flowCalls";
import {
  besideColumn,
  ERRORS_COLUMN,
  GAINS,
  GAINS_ANSWER,
  GAINS_LAST,
  GAINS_TITLE,
  HELPED_CELL,
  runRows,
  WISH_CELL,
} from "./flowLayout";

const plain = (address: string): string => address.replaceAll("$", "");

/** The open hood that needs something: short of air, or with dust that settles in its duct or further down. */
function neediest(): string {
  const [share, settles, gets] = [besideColumn("share"), besideColumn("settles"), besideColumn("gets")];
  const worst = `INDEX(${runRows("run")},MATCH(MIN(${share}),${share},0))`;
  const isShort = `AND(COUNT(${share})>0,MIN(${share})<${ENOUGH_AIR})`;
  const line = `SUMPRODUCT(MAX((${settles}<>"")*(${gets}<>"")*ROW(${settles})))`;
  const dusty = `INDEX(${runRows("run")},${line}-${FLOW_HEADER})`;
  const further = `IF(COUNT(${share})>0,${worst},INDEX(${runRows("run")},MATCH(1,${besideColumn("hoodNumber")},0)))`;
  return `IF(${isShort},${worst},IF(COUNTIF(${settles},"?*")=0,"",IF(${line}>0,${dusty},${further})))`;
}

const SURE = "± holds 19 of 20; of a sealed leak it is a range.";
const SURE_NOTE = `Two standard deviations, with inputs off as ${columnLetters(ERRORS_COLUMN)}${FLOW_HEADER} says. An input is off before the change and after it alike, so a gain is surer than the airflows.`;

/** What to change first: each single change tried for one hood, what makes it work first. */
export function gains(frame: Frame): SheetCell[] {
  const call = gainsCall(frame, HELPED_CELL);
  const none = `IF(COUNT(${besideColumn("hoodNumber")})=0,"No open hood: see B${FLOW_HEADER}","Nothing to mend: the open hoods have their air, and no dust settles")`;
  const waits = `IF(${HELPED_CELL}="",${none},${call})`;
  return [
    text(`A${GAINS_TITLE}`, "What to change first", "section"),
    text(plain(WISH_CELL).replace("B", "A"), "Hood to help", "label"),
    input(plain(WISH_CELL), null, {
      note: `The name of a hood's run, as in column ${answerLetters(FLOW_ANSWER, "run")} above.`,
    }),
    text(
      plain(WISH_CELL).replace("B", "C"),
      "Blank: the open hood that is shortest of air; where none is, one in whose duct dust settles.",
      "note",
    ),
    text(plain(HELPED_CELL).replace("B", "A"), "Tried for", "label"),
    formula(plain(HELPED_CELL), `=IF(${WISH_CELL}="",IFERROR(${neediest()},""),${WISH_CELL})`, "total"),
    text(
      plain(HELPED_CELL).replace("B", "C"),
      `Each change alone: what carries the dust of a hood that has its air, more air for one that has too little. =${quotedCall.gains(frame, HELPED_CELL)}`,
      "note",
    ),
    text(`C${GAINS - 1}`, SURE, "note"),
    ...answer(frame, onceRunsAndCurve(frame, waits)),
  ];
}

/** The table that GAINS fills; its ± are words below a number's header. */
function answer(frame: Frame, code: string): SheetCell[] {
  const formats = sureGainColumns.map(({ key, quantity }) =>
    quantity === null ? null : formatOf(frame, key === "gained" ? "leak" : quantity),
  );
  const sure = GAINS_ANSWER.column + placeOfColumn(sureGainColumns, "sure");
  return spillOf(GAINS_ANSWER.column, GAINS, GAINS_LAST, formats, code).map((cell) => {
    const { column, row } = placeOf(cell.at);
    if (column !== sure) return cell;
    return row === GAINS ? { ...cell, note: SURE_NOTE } : { ...cell, style: "resultInWords" };
  });
}
