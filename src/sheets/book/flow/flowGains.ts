import { sureGainColumns } from "../../../reference/answerColumns";
import { headerOfColumn, placeOfColumn } from "../../../reference/columnsOfAnswers";
import { FOR_HOOD, NEEDIEST } from "../../../reference/foundWords";
import { columnLetters, placeOf } from "../../address";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { saysLook } from "../parts/look";
import { FLOW_HEADER, FLOW_SYSTEM_CELL } from "../layout";
import {
  answerCell,
  answerLetters,
  FLOW_ANSWER,
  frozen,
  headOf,
  isMissing,
  onceRunsAndCurve,
  stands,
} from "../parts/answerReferences";
import { spillOf } from "../parts/spill";
import { formatOf } from "../parts/units";
import { quotedCall, gainsCall } from "./flowCalls";
import {
  ERRORS,
  ERRORS_COLUMN,
  GAINS,
  GAINS_ANSWER,
  GAINS_LAST,
  GAINS_SAY,
  GAINS_TITLE,
  HELPED_CELL,
  WISH_CELL,
} from "./flowLayout";

const plain = (address: string): string => address.replaceAll("$", "");

const SURE = "± holds 19 of 20; of a sealed leak it is a range.";
const SURE_NOTE = `Two standard deviations, with inputs off as ${columnLetters(ERRORS_COLUMN)}${FLOW_HEADER} says. An input is off before the change and after it alike, so a gain is surer than the airflows.`;

/** The hood to help as GAINS is asked: the one that is typed, or the word for the one that it finds by the same solution. */
const ASKED = `IF(${WISH_CELL}="","${NEEDIEST}",${WISH_CELL})`;

/** Whether there are none, though SOLVE may have an answer: these rest on more. */
const isNone = isMissing(headOf(GAINS_ANSWER), ERRORS, WISH_CELL);

/** The hood that GAINS was asked about, or found and says in the header of its changes. */
function helped(): string {
  const header = `$${answerLetters(GAINS_ANSWER, "change")}$${GAINS}`;
  const begin = `${headerOfColumn(sureGainColumns, "change")}${FOR_HOOD.before}`;
  const name = `MID(${header},${begin.length + 1},LEN(${header})-${begin.length + FOR_HOOD.after.length})`;
  return `=IF(OR(${saysLook(FLOW_SYSTEM_CELL)},${isNone}),"",IF(LEFT(${header},${begin.length})="${begin}",${name},${WISH_CELL}&""))`;
}

/** What is to know of the ±; where GAINS has no change to tell, what it says instead, which the cells beside it would cut off there. */
function said(frame: Frame): string {
  const [change, gained] = (["change", "gained"] as const).map((key) => answerCell(GAINS_ANSWER, key, GAINS + 1));
  return `=IF(${saysLook(FLOW_SYSTEM_CELL)},"see A3",IF(${isNone},"see ${plain(headOf(GAINS_ANSWER))}",IF(${stands(GAINS_ANSWER)},IF(AND(${change}<>"",${gained}=""),${change},"${SURE}"),${frozen(frame, GAINS_ANSWER)})))`;
}

/** What to change first: each single change tried for one hood, what makes it work first. */
export function gains(frame: Frame): SheetCell[] {
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
    formula(plain(HELPED_CELL), helped(), "total"),
    text(
      plain(HELPED_CELL).replace("B", "C"),
      `Each change alone: what carries the dust of a hood that has its air, more air for one that has too little. =${quotedCall.gains(frame, ASKED)}`,
      "note",
    ),
    formula(GAINS_SAY.replaceAll("$", ""), said(frame), "note"),
    ...answer(frame, onceRunsAndCurve(frame, gainsCall(frame, ASKED))),
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
