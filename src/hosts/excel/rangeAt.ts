import { readRectangle, type Rectangle, rectangleText } from "../../sheets/rectangle";

/** The range of a rectangle. */
export const rangeAt = (sheet: Excel.Worksheet, rectangle: Rectangle): Excel.Range =>
  sheet.getRange(rectangleText(rectangle));

/** The rectangle that Excel names by an address, with the sheet before it; null for whole columns or rows. */
export const rectangleAt = (address: string): Rectangle | null => readRectangle(withoutSheet(address));

export const withoutSheet = (address: string): string => address.slice(address.lastIndexOf("!") + 1);
