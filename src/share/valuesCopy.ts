import type { UnitSystem } from "../reference/quantities";
import type { Calculated, Shown, ShownCell } from "../sheets/calculated";
import { lookOfCell } from "../sheets/lookOfCell";
import type { Sheet, SheetCell } from "../sheets/workbook";
import { aboutCopy } from "./aboutCopy";
import { filledAddresses } from "../sheets/rectangle";
import { sourcesOfCopy } from "./sourcesOfCopy";
import type { ClubCopy, CopyOrder, FixedCell } from "./copy";
import { headCellFor, takenIn } from "./fixed/checkCells";
import { reachesOutside } from "./outside";
import { makerOf } from "./words/maker";
import { wordedSheets } from "./words/wordedSheets";

/** A copy without any formula: every cell is what it showed. */
export function valuesCopy(book: Calculated, order: CopyOrder, about: string, units: UnitSystem): ClubCopy {
  const { workbook, shown } = book;
  const still = workbook.sheets.map((sheet) => withLine(onlyToRead(valuesOf(sheet, shown)), order.date));
  const { sheets } = wordedSheets(still, { units, isLive: () => false, allLive: () => false, sheets: null });
  const formulas = workbook.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) => ("formula" in cell ? [{ sheet: name, at: cell.at, formula: cell.formula }] : [])),
  );
  const [fixed, untranslated]: [FixedCell[], FixedCell[]] = [[], []];
  for (const { sheet, at, formula } of formulas) {
    const outside = reachesOutside(formula);
    if (outside === null) fixed.push({ sheet, at, function: "", why: "the copy was asked to have values only" });
    else untranslated.push({ sheet, at, function: "", why: outside });
  }
  const aboutSheet = aboutCopy({
    name: about,
    order,
    title: workbook.name,
    maker: makerOf(workbook),
    tries: [],
    units,
    counts: [],
    fixed: [],
    untranslated,
    sources: sourcesOfCopy(book, []),
    sheets: null,
  });
  return {
    book: { workbook: { ...workbook, sheets: [aboutSheet, ...sheets] }, shown: stillShown(shown) },
    live: 0,
    fixed,
    untranslated,
  };
}

function valuesOf(sheet: Sheet, shown: Shown): Sheet {
  const there = shown.get(sheet.name);
  const listed = new Set(sheet.cells.map(({ at }) => at));
  const cells = sheet.cells.map((cell): SheetCell => {
    if ("value" in cell && cell.value !== null) return cell;
    return { ...lookOfCell(cell), value: valueOf(there?.get(cell.at)) };
  });
  const spilled = sheet.cells.flatMap((cell) => {
    const fills = there?.get(cell.at)?.fills;
    if (fills === undefined) return [];
    return filledAddresses(cell.at, fills)
      .filter((at) => !listed.has(at))
      .map((at): SheetCell => ({ at, value: valueOf(there?.get(at)) }));
  });
  return { ...sheet, cells: [...cells, ...spilled] };
}

/** Nothing to choose, and no cell that looks as if something were to be typed. */
const onlyToRead = (sheet: Sheet): Sheet => ({
  ...sheet,
  lists: [],
  hints: [],
  cells: sheet.cells.map((cell) => (cell.style === "input" ? { ...cell, style: "result" } : cell)),
});

/** A line at the head of the sheet, where there is room: each sheet may be printed or passed on by itself. */
function withLine(sheet: Sheet, date: string): Sheet {
  const at = headCellFor(sheet, takenIn(sheet), []);
  if (at === null) return sheet;
  const line: SheetCell = { at, value: `values of ${date}: nothing here recalculates`, style: "note" };
  return { ...sheet, cells: [...sheet.cells.filter((cell) => cell.at !== at), line] };
}

/** An error stands as its name, in words. */
const valueOf = (cell: ShownCell | undefined): string | number | boolean | null =>
  cell === undefined ? null : cell.value !== null && typeof cell.value === "object" ? cell.value.error : cell.value;

const stillShown = (shown: Shown): Shown =>
  new Map(
    [...shown].map(([sheet, cells]) => [
      sheet,
      new Map([...cells].map(([at, cell]) => [at, { value: valueOf(cell) }])),
    ]),
  );
