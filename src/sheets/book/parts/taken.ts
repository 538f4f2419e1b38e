import { type CellNameKey, cellNames } from "../frame";
import type { SheetKey } from "../../sheetKeys";
import type { CellName, Workbook } from "../../workbook";
import { namedCells } from "../start/startLayout";
import { keysByName } from "./keysByName";

/** What a workbook has already, so that new sheets get names of their own and use the budget's sheets that are there. */
export interface Taken {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
  readonly ours?: Partial<Record<SheetKey, string>>; // those of the sheets that are a budget's own
  readonly ourNames?: Partial<Record<CellNameKey, string>>; // what its Start calls our cells
}

/** Of two sheets of a kind the later one counts. */
export function takenIn(workbook: Workbook): Required<Taken> {
  const { sheets, names } = workbook;
  const keyed: Partial<Record<SheetKey, string>> = {};
  for (const { key, name } of sheets) if (key !== undefined) keyed[key] = name;
  const ours = { ...keysByName(workbook, keyed), ...keyed };
  const tables = sheets.flatMap((sheet) => sheet.tables ?? []);
  return {
    sheets: sheets.map(({ name }) => name),
    names: [...names, ...tables].map(({ name }) => name), // cells and tables share one set of words
    ours,
    ourNames: ours.start === undefined ? {} : ourNamesOn(ours.start, names),
  };
}

/** What the cells of a Start are called: a name may have been changed, its cell is where it was. */
export function ourNamesOn(start: string, names: readonly CellName[]): Partial<Record<CellNameKey, string>> {
  const found: Partial<Record<CellNameKey, string>> = {};
  for (const { name, sheet, at } of names) {
    const key = cellNames.find((each) => sheet === start && namedCells[each].replaceAll("$", "") === at);
    if (key !== undefined) found[key] = name;
  }
  return found;
}
