import { placeOf } from "../../../sheets/address";
import { showsPercent } from "../../../sheets/showsPercent";
import { type CheckRule, type Finding, practice } from "../finding";
import { isWithinRange, takenCells } from "../named/callsIn";

/** Arguments that take a share of 1, so that 65% is what it says; CLAIM reads percent by itself. Places count from 0. */
export const SHARES: Readonly<Record<string, readonly number[]>> = {
  DENSITY: [2],
  AIRPOWER: [2],
  LEAK: [2],
  LEAKAREA: [2],
  CLAIM: [0],
  CONVERTUNIT: [0],
};

/** Cells that show a percentage and hold a hundredth of it, where a function of ours takes them or a sheet of ours has them for its inputs. */
export const percentForNumber: CheckRule = ({ book, sheets }) => {
  const taken = takenCells(book).filter(({ by, place, asItIs }) => asItIs && SHARES[by]?.includes(place) !== true);
  const looked = new Set(sheets.map(({ sheet }) => sheet));
  return book.workbook.sheets
    .filter(({ name }) => looked.has(name))
    .flatMap(({ name: sheet, key, cells }) => {
      const here = taken.filter((range) => range.sheet === sheet);
      const hasInputs = key !== undefined && key !== "claims";
      return cells.flatMap((cell): Finding[] => {
        const { at, format } = cell;
        const value = book.shown.get(sheet)?.get(at)?.value;
        if (format === undefined || typeof value !== "number" || value === 0 || !showsPercent(format)) return [];
        const isTyped = "value" in cell && cell.value !== null;
        const place = placeOf(at);
        if (!(hasInputs && isTyped && cell.style === "input") && !here.some((range) => isWithinRange(range, place)))
          return [];
        const [holds, shows] = [value, 100 * value].map((number) => Number(number.toPrecision(6)).toLocaleString("en", { maximumFractionDigits: 12 })); // prettier-ignore
        return [
          {
            rule: "Percent for a number",
            what: `${at} shows ${shows}%: it holds ${holds}.`,
            why: `A cell that shows 3% holds 0.03, and a formula, or any function in Excel, sees no more: where % are meant it is 0.03 %. ${isTyped ? "Give the cell the number format General, then type the number without the sign." : "Where % are meant, multiply its formula by 100, and give the cell the number format General."}`,
            source: practice,
            sheet,
            at,
          },
        ];
      });
    });
};
