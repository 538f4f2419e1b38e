import type { Sheet, Workbook } from "./workbook";

const LONGEST_LITERAL = 255; // characters of a list that is written out in its rule, in the file format and in Excel

/**
 * Whether choices can be written out in the rule of a drop-down. There they are parted by commas, blanks around them are
 * lost, quotes end the list and a sign of a formula would begin one. Others stand in a column of a hidden sheet.
 */
export const fitsRule = (choices: readonly string[]): boolean =>
  choices.join(",").length <= LONGEST_LITERAL &&
  choices.every((choice) => choice.trim() === choice && choice !== "" && !/[,"\n]|^=/.test(choice));

/** The sheet that keeps the other choices; a number follows where a sheet of that name is there. */
export const LISTS_SHEET = "Duct lists";

export type Visibility = "visible" | "hidden" | "very hidden";

/**
 * Whether a sheet of a workbook is that one, which no description has: it is hidden, holds nothing but words, and only
 * drop-downs read it. Ours is hidden so that no program shows its tab; some programs hide it less. In Excel version 1.0.0
 * called it Lists, as a user may call a sheet of his own, so that one must be hidden in the way that only programs do.
 */
export function isListsSheet(sheet: Sheet, visibility: Visibility, { sheets, names }: Workbook): boolean {
  const isOurs =
    (visibility !== "visible" && /^Duct lists(?: \d+)?$/.test(sheet.name)) ||
    (visibility === "very hidden" && /^Lists(?: \d+)?$/.test(sheet.name));
  if (!isOurs || names.some((name) => name.sheet === sheet.name)) return false;
  if (!sheet.cells.every((cell) => "value" in cell && (typeof cell.value === "string" || cell.value === null)))
    return false;
  const name = sheet.name.toLowerCase();
  const reads = (formula: string): boolean =>
    [`${name}!`, `${name}'!`].some((text) => formula.toLowerCase().includes(text));
  return sheets.every(({ cells }) => cells.every((cell) => !("formula" in cell) || !reads(cell.formula)));
}
