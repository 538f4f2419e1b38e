import { cellAddress } from "../../sheets/address";
import type { ChoiceList } from "../../sheets/workbook";
import { readReference } from "../file/places";
import { addressOf, type Area, areaOf, isOfCells, rangeAt } from "./areas";
import { blocksOf } from "./blocks";

const AT_ONCE = 500; // areas asked in one request

export interface Validations {
  readonly lists: readonly ChoiceList[];
  readonly notes: ReadonlyMap<string, string>;
}

/** Drop-downs and input messages of a sheet, in areas that share one rule. */
export async function readLists(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: Excel.Range,
): Promise<Validations> {
  const special = used.getSpecialCellsOrNullObject("DataValidations");
  special.load("address");
  await context.sync();
  if (special.isNullObject) return { lists: [], notes: new Map() };
  const found: Found[] = [];
  let areas = special.address.split(",").filter(isOfCells).map(areaOf);
  while (areas.length > 0) {
    const cutUp = await readAreas(context, sheet, areas.slice(0, AT_ONCE), found);
    areas = [...areas.slice(AT_ONCE), ...cutUp];
  }
  return { lists: await listsOf(context, found), notes: notesOf(found) };
}

interface Found {
  readonly area: Area;
  readonly source: string | null; // of a list
  readonly strict: boolean;
  readonly note: string;
}

/** Reads the areas that have one rule, and answers the others cut into columns, then into cells. */
async function readAreas(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  areas: readonly Area[],
  found: Found[],
): Promise<Area[]> {
  const rules = areas.map((area) => rangeAt(sheet, area).dataValidation);
  for (const rule of rules) rule.load("type,rule,prompt,errorAlert");
  await context.sync();
  return rules.flatMap(({ type, rule, prompt, errorAlert }, index) => {
    const area = areas[index]!;
    const isMixed = MIXED.has(type) || prompt == null || errorAlert == null;
    if (isMixed && area.columns * area.rows > 1) return cut(area);
    const { source } = rule?.list ?? {};
    found.push({
      area,
      source: typeof source === "string" ? source : null,
      strict: errorAlert?.showAlert === true && errorAlert.style === "Stop",
      note: prompt?.message ?? "",
    });
    return [];
  });
}

const MIXED = new Set<string>(["Inconsistent", "MixedCriteria"]);

const cut = ({ column, row, columns, rows }: Area): Area[] =>
  columns > 1
    ? Array.from({ length: columns }, (_, right) => ({ column: column + right, row, columns: 1, rows }))
    : Array.from({ length: rows }, (_, down) => ({ column, row: row + down, columns: 1, rows: 1 }));

/** Areas of one list that lie together are one again, however they were found. */
async function listsOf(context: Excel.RequestContext, found: readonly Found[]): Promise<ChoiceList[]> {
  const cells = found.flatMap(({ area, source, strict }) =>
    source === null ? [] : cellsOf(area).map((place) => ({ ...place, key: JSON.stringify([source, strict]) })),
  );
  const blocks = blocksOf(cells).map(({ key, ...area }) => {
    const [source, strict] = JSON.parse(key) as [string, boolean];
    return { area, strict, source, range: source.startsWith("=") ? rangeOf(context, source) : null };
  });
  for (const { range } of blocks) range?.load("values");
  await context.sync();
  return blocks.flatMap(({ area, strict, source, range }) => {
    const written = source.startsWith("=") ? [] : source.split(",").map((choice) => choice.trim());
    const choices = (range?.values.flat().map(String) ?? written).filter((choice) => choice !== "");
    return choices.length === 0 ? [] : [{ range: addressOf(area), choices, strict }];
  });
}

/** The cells that hold a list's choices; null where its source is a formula of another kind. */
function rangeOf(context: Excel.RequestContext, source: string): Excel.Range | null {
  const reference = readReference(source);
  if (reference === null) return null;
  const { first, last } = reference.area;
  return context.workbook.worksheets
    .getItem(reference.sheet)
    .getRange(`${cellAddress(first.column, first.row)}:${cellAddress(last.column, last.row)}`);
}

const cellsOf = ({ column, row, columns, rows }: Area): { column: number; row: number }[] =>
  Array.from({ length: columns * rows }, (_, index) => ({
    column: column + (index % columns),
    row: row + Math.floor(index / columns),
  }));

const notesOf = (found: readonly Found[]): Map<string, string> =>
  new Map(
    found.flatMap(({ area, note }) =>
      note === "" ? [] : cellsOf(area).map(({ column, row }): [string, string] => [cellAddress(column, row), note]),
    ),
  );
