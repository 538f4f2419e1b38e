import { columnLetters, placeOf } from "../../address";
import { rectangleText } from "../../rectangle";
import type { Hint, Sheet } from "../../workbook";

const HEADINGS: readonly unknown[] = ["header", "numberHeader"];

/** A sheet on which what a heading tells of its column is also told in each cell to be filled under it. */
export function hinted(sheet: Sheet): Sheet {
  const inputs = new Set(sheet.cells.flatMap(({ at, style }) => (style === "input" ? [at] : [])));
  const hints = sheet.cells.flatMap(({ at, style, note }): Hint[] => {
    if (note === undefined || !HEADINGS.includes(style)) return [];
    const { column, row } = placeOf(at);
    let bottom = row;
    while (inputs.has(`${columnLetters(column)}${bottom + 1}`)) bottom++;
    const range = rectangleText({ top: row + 1, left: column, bottom, right: column });
    return bottom === row ? [] : [{ range, text: note }];
  });
  return hints.length === 0 ? sheet : { ...sheet, hints };
}
