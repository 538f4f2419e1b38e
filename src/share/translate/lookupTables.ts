import { cellAddress, columnLetters } from "../../sheets/address";
import { formula, input, text } from "../../sheets/cells";
import type { UnitSystem } from "../../reference/quantities";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import { type BlockName, blocks } from "./tableBlocks/blocks";
import type { BlockCell, TablePlace, TableBlock } from "./tableBlocks/block";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import type { UsedEntries } from "./usedEntries";

/**
 * The tables that a copy carries, so that its formulas can look things up and a reader can change a figure. A table comes
 * onto the sheet when a formula first asks for it; until the translation is done the sheet's list of cells grows.
 */
export interface LookupTables {
  readonly sheet: string; // its name
  readonly units: UnitSystem; // in which the tables' figures stand, whatever the units of the formula that asks
  block(name: BlockName): TablePlace;
  /** A table made for one formula, such as one of REFERENCE; asked for twice under a key it is one. */
  ownBlock(key: string, make: () => TableBlock): TablePlace;
  /** Lists of fittings as they stand in the book beyond those that are offered: see usedEntries. */
  readonly used: readonly string[];
  readonly longestList: number; // entries
}

/** The sheet of the tables, and what stands in the first column of each. */
export interface CopiedTables {
  readonly sheet: Sheet;
  readonly tables: LookupTables;
  readonly named: readonly NamedTable[]; // grows with the tables
}

interface NamedTable {
  readonly heading: string;
  readonly range: string; // as a formula on any sheet writes it
  readonly names: readonly BlockCell[];
}

/**
 * @param used entries of fitting lists that the book has and the offered list may lack
 * @param name of the sheet, one that the workbook has not taken
 */
export function copyTables(
  units: UnitSystem,
  { entries: used, longest }: UsedEntries = { entries: [], longest: 0 },
  name = "Lookups",
): CopiedTables {
  const cells: SheetCell[] = [
    text("A1", "Look-up tables", "title"),
    text(
      "A2",
      "The formulas of the other sheets look here. Change a figure and they follow; its source and basis are then yours.",
      "note",
    ),
    text("A3", "Leave the names: where one is replaced, nothing has an answer.", "note"),
  ];
  const placed = new Map<string, TablePlace>();
  const named: NamedTable[] = [];
  let next = 4;
  const put = (block: TableBlock): TablePlace => {
    const place = placeOfBlock(block, name, next);
    cells.push(...blockCells(block, place, next));
    const [heading = ""] = block.columns;
    named.push({ heading, range: place.range(heading), names: block.rows.map(([name = null]) => name) });
    next += block.rows.length + 3;
    return place;
  };
  const ownBlock: LookupTables["ownBlock"] = (key, make) => {
    const place = placed.get(key) ?? put(make());
    placed.set(key, place);
    return place;
  };
  const tables: LookupTables = {
    sheet: name,
    units,
    used,
    longestList: longest,
    ownBlock,
    block: (key) => ownBlock(key, () => blocks[key](tables)),
  };
  const sheet: Sheet = {
    name,
    columns: [34, 16, 16, 16, 16, 16, 16],
    tallRows: [],
    frozen: { rows: 0, columns: 0 },
    cells,
    lists: [],
    flags: [],
  };
  return { sheet, tables, named };
}

const HEAD = 2; // rows of a block above its first row: title and headers

function placeOfBlock(block: TableBlock, sheet: string, top: number): TablePlace {
  const prefix = sheetPrefix(sheet);
  const letter = (column: string): string => {
    const at = block.columns.findIndex((header) => header === column);
    if (at < 0) throw new Error(`the table ${block.title} has no column ${column}`);
    return columnLetters(at + 1);
  };
  const first = top + HEAD;
  const last = first + block.rows.length - 1;
  const lastOfHead = first + (block.headRows ?? block.rows.length) - 1;
  return {
    range: (column) => `${prefix}$${letter(column)}$${first}:$${letter(column)}$${last}`,
    head: (column) => `${prefix}$${letter(column)}$${first}:$${letter(column)}$${lastOfHead}`,
    rest: (from, to) => `${prefix}$${letter(from)}$${lastOfHead + 1}:$${letter(to)}$${last}`,
    cell: (column, row) => `${prefix}$${letter(column)}$${first + row}`,
    headers: `${prefix}$A$${first - 1}:$${columnLetters(block.columns.length)}$${first - 1}`,
    all: `${prefix}$A$${first}:$${columnLetters(block.columns.length)}$${last}`,
    rowOf: (key) => {
      const at = block.rows.findIndex((row) => row[0] === key);
      return at < 0 ? null : at;
    },
  };
}

function blockCells(block: TableBlock, place: TablePlace, top: number): SheetCell[] {
  const head = [
    text(cellAddress(1, top), block.title, "section"),
    ...block.columns.map((header, column) => text(cellAddress(column + 1, top + 1), header, "header")),
  ];
  const body = block.rows.flatMap((row, index) =>
    row.flatMap((cell, column) => blockCell(cell, cellAddress(column + 1, top + HEAD + index), place, block)),
  );
  return [...head, ...body];
}

function blockCell(cell: BlockCell, at: string, place: TablePlace, block: TableBlock): SheetCell[] {
  if (cell === null) return [];
  if (typeof cell === "function") return [formula(at, `=${cell(place)}`)];
  return [typeof cell === "number" && block.inputs ? input(at, cell) : { at, value: cell, style: "text" }];
}
