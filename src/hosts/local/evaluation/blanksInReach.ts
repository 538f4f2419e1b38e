import type { CellPosition, GridModel } from "../grid";
import type { Zone } from "../limits/zones";
import type { Evaluator, SheetRange } from "./evaluator";

type Getters = Pick<GridModel["getters"], "getCells" | "getCellPosition" | "getSheetZone">;

/**
 * The blank cells that formulas would fill, were their answers longer or wider: as far as no other cell is in the way, for a
 * formula fills all cells of its answer or none.
 */
export function blanksInReach(
  { spreadingRelations }: Evaluator,
  getters: Getters,
): (formulas: readonly CellPosition[]) => SheetRange[] {
  const filledBy = ({ sheetId, col, row }: CellPosition): Zone =>
    spreadingRelations.getArrayResultZone({ sheetId, col, row }) ?? { left: col, right: col, top: row, bottom: row };
  const sheets = new Map<string, ReadonlySet<number>>();
  const takenOn = (sheetId: string): ReadonlySet<number> => {
    const known = sheets.get(sheetId);
    if (known !== undefined) return known;
    const taken = new Set<number>();
    for (const cell of getters.getCells(sheetId)) {
      if (!cell.isFormula && cell.content === "") continue;
      const { left, right, top, bottom } = filledBy(getters.getCellPosition(cell.id));
      for (let col = left; col <= right; col++) for (let row = top; row <= bottom; row++) taken.add(numberOf(col, row));
    }
    sheets.set(sheetId, taken);
    return taken;
  };
  return (formulas) =>
    joined(
      formulas.flatMap((formula) => {
        const { sheetId, col, row } = formula;
        const taken = takenOn(sheetId);
        const edge = getters.getSheetZone(sheetId);
        const own = filledBy(formula);
        let { right, bottom } = own;
        while (right < edge.right && !taken.has(numberOf(right + 1, row))) right++;
        while (bottom < edge.bottom && !taken.has(numberOf(col, bottom + 1))) bottom++;
        const zones: Zone[] = [];
        if (right > own.right) zones.push({ left: own.right + 1, right, top: row, bottom });
        if (bottom > own.bottom) zones.push({ left: col, right: own.right, top: own.bottom + 1, bottom });
        return zones.map((zone) => ({ sheetId, zone }));
      }),
    );
}

const numberOf = (col: number, row: number): number => row * 1e5 + col;

/** The same cells in fewer ranges: those of formulas that stand below each other are one. */
function joined(ranges: readonly SheetRange[]): SheetRange[] {
  const found: SheetRange[] = [];
  const sorted = [...ranges].sort(
    (one, other) =>
      one.sheetId.localeCompare(other.sheetId) ||
      one.zone.left - other.zone.left ||
      one.zone.right - other.zone.right ||
      one.zone.top - other.zone.top,
  );
  for (const range of sorted) {
    const { sheetId, zone } = range;
    const last = found.at(-1);
    const isNext =
      last?.sheetId === sheetId &&
      last.zone.left === zone.left &&
      last.zone.right === zone.right &&
      zone.top <= last.zone.bottom + 1;
    if (isNext)
      found[found.length - 1] = { sheetId, zone: { ...last.zone, bottom: Math.max(last.zone.bottom, zone.bottom) } };
    else found.push(range);
  }
  return found;
}
