import { placeOf } from "../../../sheets/address";
import { showsDay } from "../../../sheets/showsDay";
import { type Finding, practice, type CheckRule } from "../finding";
import { isWithinRange, takenCells } from "../named/callsIn";

/** Cells that show a day or a time and reach a function of ours as the number behind it: 1/2 that became one while it was typed. */
export const dayForNumber: CheckRule = ({ book, sheets }) => {
  const taken = takenCells(book);
  const looked = new Set(sheets.map(({ sheet }) => sheet));
  return book.workbook.sheets
    .filter(({ name }) => looked.has(name))
    .flatMap(({ name: sheet, cells }) => {
      const here = taken.filter((range) => range.sheet === sheet);
      return cells.flatMap(({ at, format }): Finding[] => {
        const value = book.shown.get(sheet)?.get(at)?.value;
        if (format === undefined || typeof value !== "number" || !showsDay(format)) return [];
        const place = placeOf(at);
        if (!here.some((range) => isWithinRange(range, place))) return [];
        return [
          {
            rule: "Day for a number",
            what: `${at} shows a day or a time where a number is meant.`,
            why: `Excel takes 1/2 for a day as it is typed, and gives the functions the number behind it, here ${Number(value.toPrecision(6)).toLocaleString("en")}. Write 0.5 or =1/2, and give the cell the number format General.`,
            source: practice,
            sheet,
            at,
          },
        ];
      });
    });
};
