import { filledAddresses } from "../sheets/rectangle";
import type { Shown } from "../sheets/calculated";
import type { Sheet } from "../sheets/workbook";
import type { RestsOn } from "./fixed/restOn";
import type { TranslatedSheets } from "./translateSheets";

/** Formulas of a sheet of the copy that the book's own cells became. */
export interface CountOfFormulas {
  readonly sheet: string;
  readonly live: number; // all that they rest on recalculates
  readonly resting: number; // they compute too, but from fixed numbers
}

/** How many formulas of each sheet recalculate. A fixed error or empty text is written as a formula, and is none. */
export function countOfFormulas(
  sheets: readonly Sheet[],
  { live, fixed, untranslated }: TranslatedSheets,
  resting: RestsOn,
  shown: Shown,
): CountOfFormulas[] {
  const written = new Map(live.map(({ sheet, at, cells }) => [`${sheet}!${at}`, extentOf(cells)]));
  return sheets.map(({ name, cells }) => {
    const kept = new Set(
      [...fixed, ...untranslated].flatMap(({ sheet, at, extent }) =>
        sheet === name ? filledAddresses(at, extent) : [],
      ),
    );
    const old = new Set(
      [...(resting.get(name)?.keys() ?? [])].flatMap((at) =>
        filledAddresses(at, written.get(`${name}!${at}`) ?? shown.get(name)?.get(at)?.fills ?? ONE),
      ),
    );
    const formulas = cells.filter((cell) => "formula" in cell && !kept.has(cell.at));
    const restingHere = formulas.filter(({ at }) => old.has(at)).length;
    return { sheet: name, live: formulas.length - restingHere, resting: restingHere };
  });
}

const ONE = { rows: 1, columns: 1 };

const extentOf = (cells: readonly (readonly string[])[]) => ({ rows: cells.length, columns: cells[0]?.length ?? 1 });
