import type { CellPosition, GridModel } from "../grid";

type Getters = Pick<GridModel["getters"], "getCell" | "getCells" | "getCellPosition">;

/** Of a sheet, by column, the nearest cell above each row that something stands in, as a row; -1 where there is none. */
type Above = ReadonlyMap<number, Int32Array>;

/**
 * The formulas that fill a blank cell, should their answers reach as far as that: a formula fills all cells of its answer or
 * none, so nothing may stand between. What stands in the book must not change meanwhile.
 */
export function fillersOf(getters: Getters): (blank: CellPosition) => CellPosition[] {
  const sheets = new Map<string, Above>();
  const aboveOn = (sheetId: string): Above => {
    const known = sheets.get(sheetId);
    if (known !== undefined) return known;
    const rows = new Map<number, number[]>();
    for (const cell of getters.getCells(sheetId)) {
      if (!cell.isFormula && cell.content === "") continue;
      const { col, row } = getters.getCellPosition(cell.id);
      const inColumn = rows.get(col);
      if (inColumn === undefined) rows.set(col, [row]);
      else inColumn.push(row);
    }
    const above = new Map([...rows].map(([col, taken]) => [col, nearestAbove(taken)] as const));
    sheets.set(sheetId, above);
    return above;
  };
  return ({ sheetId, col, row }) => {
    const above = aboveOn(sheetId);
    const found: CellPosition[] = [];
    let lowest = -1; // of what stands to the right of a column, above the blank cell
    for (let left = col; left >= 0 && lowest < row; left--) {
      const inColumn = above.get(left);
      if (inColumn === undefined) continue;
      const stands = inColumn[Math.min(row, inColumn.length - 1)]!;
      if (stands <= lowest) continue;
      lowest = stands;
      const position = { sheetId, col: left, row: stands };
      if (getters.getCell(position)?.isFormula === true) found.push(position);
    }
    return found;
  };
}

/** For each row down to the last that is taken: that row itself where it is taken, else the nearest one above. */
function nearestAbove(taken: readonly number[]): Int32Array {
  const rows = new Int32Array(Math.max(...taken) + 1).fill(-1);
  for (const row of taken) rows[row] = row;
  for (let row = 1; row < rows.length; row++) if (rows[row] === -1) rows[row] = rows[row - 1]!;
  return rows;
}
