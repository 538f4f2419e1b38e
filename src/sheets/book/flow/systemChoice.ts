import { formula, input, text } from "../../cells";
import type { ChoiceList, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CALIBRATED, ENTERED, FLOW_SYSTEM_CELL, fanCurve, runsTable, SYSTEM_CELL } from "../layout";
import { FLOW_ANSWER, headOf, isMissing, noAnswer } from "../parts/answerReferences";
import { readingsRange } from "../parts/inUse";
import { ERRORS, GATES } from "./flowLayout";

const CELL = SYSTEM_CELL.replaceAll("$", "");

/** By which ducts and fan this sheet and those that read it say what flows, and what that is now. */
export function systemChoice(frame: Frame): SheetCell[] {
  const says = formula(FLOW_SYSTEM_CELL.replaceAll("$", ""), `=${answered(frame, systemInWords(frame))}`, "note");
  if (!frame.has("measured")) return [says];
  const measured = frame.sheet("measured");
  const note = `${ENTERED}: as typed on ${frame.sheet("runs")} and ${frame.sheet("fan")}. ${CALIBRATED}: as the readings of ${measured} make them, with the ± that these leave. Leaks, Sizes and Summary go by it too.`;
  return [text("A2", "Ducts and fan", "label"), input(CELL, ENTERED, { note }), says];
}

/**
 * The words, or that there is no answer. A program without our functions keeps the numbers that were computed from the answer, also after a
 * change: LibreOffice computes anew what reads the changed cell, but goes past a table that it has not shown yet. So this reads
 * every input itself, and what reads the answer reads this.
 */
function answered(frame: Frame, words: string): string {
  const readings = frame.has("measured") ? [readingsRange(frame), ERRORS] : []; // both make the calibrated ducts
  const inputs = [runsTable(frame), fanCurve(frame), GATES, frame.name("density"), ...readings];
  return `IF(${isMissing(headOf(FLOW_ANSWER), ...inputs)},${noAnswer(frame, FLOW_ANSWER)},${words})`;
}

export const systemList = (frame: Frame): ChoiceList[] =>
  frame.has("measured") ? [{ range: CELL, choices: [ENTERED, CALIBRATED], strict: true }] : [];

/** Which it is, also where the cell holds another word, which counts as blank. */
export function systemInWords(frame: Frame): string {
  if (!frame.has("measured")) return '""';
  const readings = readingsRange(frame);
  const chosen = frame.ref("flow", SYSTEM_CELL);
  const none = `Nothing is read on ${frame.sheet("measured")}: as entered`;
  return `IF(${chosen}="${CALIBRATED}",IF(COUNT(${readings})=0,"${none}","Ducts and fan as ${frame.sheet("measured")} makes them"),"Ducts and fan as typed")`;
}
