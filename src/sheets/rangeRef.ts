import { fixedAddress } from "./address";
import { fixedText, readRectangle, type Rectangle, rectangleText } from "./rectangle";
import { sheetPrefix } from "./sheetPrefix";

/** Cells of one sheet that lie in a rectangle. */
export interface RangeRef extends Rectangle {
  readonly sheet: string;
}

/** A name in quotes, or without, before the exclamation mark; the signs that no sheet's name has tell another workbook. */
const WITH_SHEET = /^(?:'((?:[^'[\]:\\/?*]|'')+)'|([^'!,()[\]:\\/?*\s]+))!([^!]+)$/;

/**
 * The cells that a reference such as Runs!$B$8:$S$48 names; null for whole columns, other workbooks and wrong addresses.
 *
 * @param sheet on which the reference stands, and which it means where it names none
 */
export function readRange(text: string, sheet: string): RangeRef | null {
  const elsewhere = withSheet(text);
  if (elsewhere !== null) return elsewhere;
  const here = readRectangle(text);
  return here === null ? null : { sheet, ...here };
}

/** The same of a formula that is one reference and must name its sheet, as those of names and of lists do: =Runs!$B$8. */
export const readReference = (formula: string): RangeRef | null => withSheet(formula.trim().replace(/^=/, ""));

function withSheet(text: string): RangeRef | null {
  const [, quoted, plain, range] = WITH_SHEET.exec(text) ?? [];
  const sheet = plain ?? quoted?.replaceAll("''", "'");
  const rectangle = range === undefined ? null : readRectangle(range);
  return sheet === undefined || rectangle === null ? null : { sheet, ...rectangle };
}

/** One cell as a formula on any sheet writes it: Runs!$B$9. */
export const cellText = (sheet: string, column: number, row: number): string =>
  `${sheetPrefix(sheet)}${fixedAddress(column, row)}`;

/** A range as a formula on any sheet writes it: Runs!$B$8:$S$48, or one cell. */
export const rangeText = ({ sheet, ...rectangle }: RangeRef): string => `${sheetPrefix(sheet)}${fixedText(rectangle)}`;

/** A range as a person reads it: My runs!B8:S48. */
export const plainRange = ({ sheet, ...rectangle }: RangeRef): string => `${sheet}!${rectangleText(rectangle)}`;
