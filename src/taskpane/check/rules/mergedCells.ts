import { cellAddress, placeOf } from "../../../sheets/address";
import { type CheckRule, type Finding, practice } from "../finding";
import { isWithinRange, takenCells } from "../named/callsIn";

/** Merged cells where a function of ours takes them or a sheet of ours has them for its inputs: all but the first are blank. Only some hosts tell. */
export const mergedCells: CheckRule = ({ book, sheets }) =>
  sheets
    .filter(({ merged }) => merged.length > 0)
    .flatMap(({ sheet, merged }) => {
      const here = takenCells(book).filter((range) => range.sheet === sheet);
      const { key, cells } = book.workbook.sheets.find(({ name }) => name === sheet)!;
      const inputs = new Set(
        key === undefined ? [] : cells.flatMap(({ at, style }) => (style === "input" ? [at] : [])),
      );
      return merged.flatMap(([at, { rows, columns }]): Finding[] => {
        const place = placeOf(at);
        if (!inputs.has(at) && !here.some((range) => isWithinRange(range, place))) return [];
        const last = cellAddress(place.column + columns - 1, place.row + rows - 1);
        return [
          {
            rule: "Merged cells",
            what: `${at} to ${last} are merged: only ${at} holds what they show.`,
            why: "A formula, or any function, sees a blank in each of the others: no gate there, no length, no hood. Undo the merging and fill each cell.",
            source: practice,
            sheet,
            at,
          },
        ];
      });
    });
