import { formula, input, text } from "../../cells";
import type { ChoiceList, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CALIBRATED, ENTERED, SYSTEM_CELL } from "../layout";
import { readingsRange } from "../parts/inUse";

const CELL = SYSTEM_CELL.replaceAll("$", "");

/** By which ducts and fan this sheet and those that read it say what flows, and what that is now. */
export function systemChoice(frame: Frame): SheetCell[] {
  if (!frame.has("measured")) return [];
  const measured = frame.sheet("measured");
  const note = `${ENTERED}: as typed on ${frame.sheet("runs")} and ${frame.sheet("fan")}. ${CALIBRATED}: as the readings of ${measured} make them, with the ± that these leave. Leaks, Sizes and Summary go by it too.`;
  return [
    text("A2", "Ducts and fan", "label"),
    input(CELL, ENTERED, { note }),
    formula("A3", `=${systemInWords(frame)}`, "note"),
  ];
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
