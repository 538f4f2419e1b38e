import { itemAt } from "../../reference/itemAt";
import { placeOf } from "../../sheets/address";
import { TEXT } from "../../sheets/textCells";
import type { CellLook, SheetCell } from "../../sheets/workbook";
import { textOfContent } from "./content";
import type { CellPosition, GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";
import { type GridBorder, type GridStyle, lookFromGrid, sidesOf } from "./looks";
import { atOf } from "./shownCells";

/**
 * What cells were described as, to be taken again. None of it holds where a sheet goes or is renamed, which formulas of other sheets
 * name, and where a note comes.
 */
export type KnownCells = WeakMap<Cell, KnownCell>;

type Getters = GridModel["getters"];
type Cell = ReturnType<Getters["getCells"]>[number];

interface KnownCell {
  readonly compiled: unknown; // all else of a cell is of another object when it changes
  readonly at: string;
  readonly lines: string;
  readonly described: SheetCell | null; // null for one that needs no description
}

/** @param notes by address */
export function sheetCells(
  getters: Getters,
  sheetId: string,
  notes: ReadonlyMap<string, string | undefined>,
  known: KnownCells,
): SheetCell[] {
  const cells = getters.getCells(sheetId).map((cell) => ({ cell, position: getters.getCellPosition(cell.id) }));
  cells.sort((one, other) => one.position.row - other.position.row || one.position.col - other.position.col);
  return cells.flatMap(({ cell, position }): SheetCell[] => {
    const border = getters.getCellBorder(position) as GridBorder | null;
    const at = atOf(position);
    const now = { compiled: cell.isFormula && cell.compiledFormula, at, lines: sidesOf(border) };
    const before = known.get(cell);
    const isKnown = before?.compiled === now.compiled && before.at === at && before.lines === now.lines;
    const described = isKnown ? before.described : describedCell(getters, cell, border, at, notes.get(at));
    if (!isKnown) known.set(cell, { ...now, described });
    return described === null ? [] : [described];
  });
}

/**
 * The cells of a sheet of which some were entered anew: only these are described again. Entering changes nothing else of a sheet.
 *
 * @param cells row by row, as `sheetCells` gives them
 */
export function renewedCells(
  model: GridModel,
  cells: readonly SheetCell[],
  entered: readonly CellPosition[],
): SheetCell[] {
  const { getters } = model;
  const all = [...cells];
  for (const position of entered) {
    const at = atOf(position);
    const index = placeIn(all, position);
    const cell = getters.getCell(position);
    const border = getters.getCellBorder(position) as GridBorder | null;
    const note = keptGetters(model).getCellNote(position);
    const described = cell === undefined ? null : describedCell(getters, cell, border, at, note);
    all.splice(index, all[index]?.at === at ? 1 : 0, ...(described === null ? [] : [described]));
  }
  return all;
}

/** Where a cell stands among those that stand row by row, or would. */
function placeIn(cells: readonly SheetCell[], { col, row }: CellPosition): number {
  let [from, to] = [0, cells.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    const place = placeOf(itemAt(cells, middle).at);
    if (place.row - 1 < row || (place.row - 1 === row && place.column - 1 < col)) from = middle + 1;
    else to = middle;
  }
  return from;
}

function describedCell(
  getters: Getters,
  cell: Cell,
  border: GridBorder | null,
  at: string,
  note: string | undefined,
): SheetCell | null {
  const style = lookFromGrid(cell.style as GridStyle | undefined, border);
  const look: CellLook = {
    at,
    ...(style === undefined ? {} : { style }),
    ...(cell.format === undefined ? {} : { format: cell.format }),
    ...(note === undefined ? {} : { note }),
  };
  if (cell.isFormula) return { ...look, formula: cell.compiledFormula.toFormulaString(getters) };
  if (cell.parsedValue === null) return Object.keys(look).length === 1 ? null : { ...look, value: null };
  // the grid parses 5/6 and 95% also where the cell shows them as texts
  return { ...look, value: cell.format === TEXT ? textOfContent(cell.content) : cell.parsedValue };
}
