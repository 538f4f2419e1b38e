import { type CellNameKey, cellNames, type SheetKey, sheetKeys, usualNames } from "../../sheets/book/frame";
import type { Taken } from "../../sheets/book/parts/plan";
import { namedCells } from "../../sheets/book/start/startLayout";
import type { GridModel } from "./grid";
import { rangeOf } from "./shownCells";

/**
 * What the grid has already: so that new sheets get names of their own, and use the budget's sheets that are there. A
 * sheet is a budget's own when it is called as ours are and has a formula that asks for our units, for a function of ours,
 * or for another of those sheets; Start is the one that the names point to.
 */
export function takenIn({ getters }: GridModel): Taken {
  const ids = getters.getSheetIds();
  const names = getters.getNamedRanges();
  const taken = { sheets: ids.map((id) => getters.getSheetName(id)), names: names.map(({ name }) => name) };
  const named = (key: CellNameKey) =>
    [...names]
      .reverse()
      .find(
        ({ name, range }) =>
          new RegExp(`^${key}(_\\d+)?$`, "i").test(name) && rangeOf(range.zone) === namedCells[key].replaceAll("$", ""),
      );
  const units = named("units");
  if (units === undefined) return taken;
  const start = getters.getSheetName(units.range.sheetId);
  const asking = new RegExp(`\\b(${units.name}|${start})\\b|\\bDUCT\\.|\\bBudget( \\d+)?'?!`, "i");
  const ours: Partial<Record<SheetKey, string>> = { start };
  for (const id of ids) {
    const name = getters.getSheetName(id);
    const key = sheetKeys.find((each) => new RegExp(`^${usualNames[each]}( \\d+)?$`).test(name));
    if (key !== undefined && key !== "start" && asksFor(getters, id, asking)) ours[key] = name;
  }
  return {
    ...taken,
    ours,
    ourNames: Object.fromEntries(
      cellNames.flatMap((key) => {
        const found = named(key);
        return found?.range.sheetId === units.range.sheetId ? [[key, found.name]] : [];
      }),
    ),
  };
}

const asksFor = (getters: GridModel["getters"], sheetId: string, asking: RegExp): boolean =>
  getters
    .getCells(sheetId)
    .some((cell) => cell.isFormula && asking.test(cell.compiledFormula.toFormulaString(getters)));
