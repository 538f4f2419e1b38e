import type { BookSetting, Calculated, Extent, ShownCell } from "../../sheets/calculated";
import { cellAddress } from "../../sheets/address";
import type { CellName, Sheet } from "../../sheets/workbook";
import { isListsSheet, type Visibility } from "../../sheets/longLists";
import type { SheetKey } from "../../sheets/sheetKeys";
import { isManual } from "./manual";
import { cellName, readKeys } from "./marks";
import { MOST_AREA } from "../../sheets/extent";
import { readCells } from "./readCells";
import { readFlags, readLayout, readTables } from "./readLayout";
import { readMerged } from "./readMerged";
import { readPrint } from "./readPrint";
import { readLists } from "./readLists";
import { valueAt } from "../../reference/itemAt";

const MOST_STYLED = 200_000; // cells: a sheet styled beyond that has whole columns coloured, and is read by its values

/** Everything that stands in the open workbook. Charts cannot be read back below ExcelApi 1.15, so they are left out. */
export async function readBook(): Promise<Calculated> {
  const { title, there, names, settings } = await Excel.run(readOutline);
  const sheets: Sheet[] = [];
  const shown = new Map<string, ReadonlyMap<string, ShownCell>>();
  for (const { name, key } of there) {
    const read = await Excel.run((context) => readSheet(context, name));
    sheets.push(key === undefined ? read.sheet : { key, ...read.sheet });
    shown.set(name, read.shown);
  }
  const all = { name: title, sheets, names };
  const visibilities = new Map(there.map(({ name, visibility }) => [name, visibility]));
  const kept = sheets.filter((sheet) => !isListsSheet(sheet, visibilities.get(sheet.name) ?? "visible", all));
  for (const { name } of sheets) if (!kept.some((sheet) => sheet.name === name)) shown.delete(name);
  return { workbook: { ...all, sheets: kept }, shown, settings };
}

interface SheetThere {
  readonly name: string;
  readonly visibility: Visibility;
  readonly key: SheetKey | undefined;
}

interface Outline {
  readonly title: string;
  readonly there: readonly SheetThere[];
  readonly names: readonly CellName[];
  readonly settings: readonly BookSetting[];
}

/** Hidden names stay out. */
async function readOutline(context: Excel.RequestContext): Promise<Outline> {
  const { workbook } = context;
  workbook.load("name,usePrecisionAsDisplayed");
  workbook.application.load("calculationMode");
  workbook.application.iterativeCalculation.load("enabled");
  workbook.worksheets.load("items/name,items/visibility");
  workbook.names.load("items/name,items/formula,items/visible");
  await context.sync();
  const keys = await readKeys(context, workbook.worksheets.items, workbook.names.items);
  return {
    title: workbook.name.replace(/[.]xls[a-z]?$/i, ""),
    there: workbook.worksheets.items.map(({ name, visibility }) => ({
      name,
      visibility: VISIBILITIES[visibility],
      key: keys.get(name),
    })),
    names: workbook.names.items.filter(({ visible }) => visible).flatMap(cellName),
    settings: [
      ...(isManual(workbook.application) ? (["calculates when asked"] as const) : []),
      ...(workbook.usePrecisionAsDisplayed ? (["rounds as shown"] as const) : []),
      ...(workbook.application.iterativeCalculation.enabled ? (["counts in circles"] as const) : []),
    ],
  };
}

const VISIBILITIES = { Visible: "visible", Hidden: "hidden", VeryHidden: "very hidden" } as const;

async function readSheet(
  context: Excel.RequestContext,
  name: string,
): Promise<{ sheet: Sheet; shown: ReadonlyMap<string, ShownCell> }> {
  const there = context.workbook.worksheets.getItem(name);
  const used = await usedRange(context, name);
  if (used === null) return { sheet: { name, ...BLANK }, shown: new Map() };
  const { cells, shown } = await readCells(context, there, used);
  const layout = await readLayout(context, there, used);
  const { lists, hints, notes } = await readLists(context, there, used);
  const print = await readPrint(context, there);
  const sheet: Sheet = {
    name,
    ...layout,
    cells: withNotes(cells, notes),
    lists,
    flags: await readFlags(context, there),
    ...(hints.length === 0 ? {} : { hints }),
    tables: await readTables(context, there),
    ...(print === undefined ? {} : { print }),
  };
  const merged = await readMerged(context, used);
  return { sheet, shown: new Map([...shown].map(([at, cell]) => [at, withExtent(cell, merged.get(at))])) };
}

const withExtent = (cell: ShownCell, merged: Extent | undefined): ShownCell =>
  merged === undefined ? cell : { ...cell, merged };

const BLANK: Omit<Sheet, "name"> = {
  columns: [],
  tallRows: [],
  frozen: { rows: 0, columns: 0 },
  cells: [],
  lists: [],
  flags: [],
};

/** What is filled or styled, or only what is filled where that is far more. */
async function usedRange(context: Excel.RequestContext, name: string): Promise<Excel.Range | null> {
  const sheet = context.workbook.worksheets.getItem(name);
  const styled = sheet.getUsedRangeOrNullObject(false);
  const filled = sheet.getUsedRangeOrNullObject(true);
  styled.load("cellCount");
  filled.load("cellCount,rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (styled.isNullObject) return null;
  if (isWithin(styled.cellCount, MOST_STYLED)) return styled;
  if (filled.isNullObject) return null;
  const { rowIndex, columnIndex, rowCount, columnCount } = filled;
  if (!isWithin(filled.cellCount, MOST_AREA))
    throw new Error(
      `The sheet "${name}" is filled as far as ${cellAddress(columnIndex + columnCount, rowIndex + rowCount)}, farther than can be read here: delete what stands far from the rest`,
    );
  return filled;
}

/** Excel counts -1 cells beyond two thousand million. */
const isWithin = (count: number, most: number): boolean => count >= 0 && count <= most;

/** A note belongs to a cell, which may be blank and without a style of its own. */
function withNotes(cells: Sheet["cells"], notes: ReadonlyMap<string, string>): Sheet["cells"] {
  const listed = new Set(cells.map(({ at }) => at));
  return [
    ...cells.map((cell) => (notes.has(cell.at) ? { ...cell, note: valueAt(notes, cell.at) } : cell)),
    ...[...notes].filter(([at]) => !listed.has(at)).map(([at, note]) => ({ at, note, value: null })),
  ];
}
