import { cellAddress } from "../sheets/address";
import { CALIBRATED, ENTERED } from "../sheets/book/layout";
import { cellText, readRange } from "../sheets/rangeRef";
import type { Flag, Sheet, SheetCell } from "../sheets/workbook";
import { type Chosen, chosenIn, saysCalibrated } from "./chosenSystem";
import { quotedText } from "./references";

/** By these words a flag finds the cells in which it is said, and whoever makes a copy live again finds the formulas. */
export const OTHER_WORD = "Another word";

/**
 * Formulas of the spreadsheet alone go on reading the cell of the choice, but what they tell of was computed for one word of it. At any
 * other word, which a list does not keep out when it is pasted, they say so in place of what they would show.
 */
export function withWordsOfChoice(sheet: Sheet, { cells: choices, book: { shown } }: Chosen): Sheet {
  if (choices.length === 0) return sheet;
  const flags: Flag[] = [];
  const cells = sheet.cells.map((cell): SheetCell => {
    if (!("formula" in cell)) return cell;
    let reference: string | null = null;
    chosenIn(cell.formula, (one) => ((reference = one), true));
    const range = reference === null ? null : readRange(reference, sheet.name);
    if (reference === null || range === null || !choices.some((one) => isSame(one, range))) return cell;
    const word = shown.get(range.sheet)?.get(cellAddress(range.left, range.top));
    const typed = typeof word?.value === "string" ? word.value : "";
    const [kept, place] = [saysCalibrated(word) ? CALIBRATED : ENTERED, cellText(range.sheet, range.left, range.top)];
    const otherwise = `${OTHER_WORD} in ${place.replaceAll("$", "")} changes no number of this copy: all stay ${kept}`;
    const isKept = `${String(reference)}&""=${quotedText(typed)}`;
    flags.push({ range: cell.at, containsText: OTHER_WORD, style: "flag" });
    return { ...cell, formula: `=IF(${isKept},${cell.formula.slice(1)},${quotedText(otherwise)})` };
  });
  return { ...sheet, cells, flags: [...sheet.flags, ...flags] };
}

/** The formula as it was before. */
export const withoutWordsOfChoice = (formula: string): string => formula.replace(SAID, "=$1");

const SAID = new RegExp(`^=IF\\(.+?&""="[^"]*",(.*),"${OTHER_WORD} in [^"]*"\\)$`, "s");

type Place = NonNullable<ReturnType<typeof readRange>>;

const isSame = (one: Place, other: Place): boolean =>
  one.sheet === other.sheet && one.left === other.left && one.top === other.top;
