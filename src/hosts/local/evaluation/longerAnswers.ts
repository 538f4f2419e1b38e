import type { CellPosition, GridModel } from "../grid";
import { blanksInReach } from "./blanksInReach";
import type { Evaluator } from "./evaluator";

/** Whether a sheet rests on blank cells that formulas of other sheets would fill, were their answers longer or wider than they are. */
export interface LongerAnswers {
  readonly couldReach: (sheetId: string, formulas: readonly CellPosition[]) => boolean;
  /** Has it found out anew, since formulas, what they fill or blank cells are others. */
  readonly forget: () => void;
}

/** To find out takes a while, and it stays so while numbers and texts are typed over. */
export function longerAnswers(evaluator: Evaluator, getters: GridModel["getters"]): LongerAnswers {
  const safe = new Map<string, Set<string>>(); // by sheet, the formulas that do not reach it
  const findOut = (sheetId: string, formulas: readonly CellPosition[]): boolean => {
    const blanksOf = blanksInReach(evaluator, getters);
    const seen = new Set(formulas.map(keyOf));
    const reached = evaluator.nextRangesToUpdate.copy();
    reached.clear();
    for (let fresh = formulas; fresh.length > 0;) {
      const resting = evaluator.formulaDependencies().getCellsDependingOn(blanksOf(fresh), reached);
      const next: CellPosition[] = []; // their answers may become longer in turn
      for (const { sheetId: on, zone } of resting) {
        if (on === sheetId) return true;
        for (let col = zone.left; col <= zone.right; col++)
          for (let row = zone.top; row <= zone.bottom; row++) {
            const position = { sheetId: on, col, row };
            if (seen.has(keyOf(position)) || getters.getCell(position)?.isFormula !== true) continue;
            seen.add(keyOf(position));
            next.push(position);
          }
      }
      reached.addMany(resting);
      fresh = next;
    }
    return false;
  };
  return {
    couldReach: (sheetId, formulas) => {
      const known = safe.get(sheetId) ?? new Set();
      safe.set(sheetId, known);
      const others = formulas.filter((formula) => !known.has(keyOf(formula)));
      if (others.length > 0 && findOut(sheetId, others)) return true;
      others.forEach((formula) => known.add(keyOf(formula)));
      return false;
    },
    forget: () => safe.clear(),
  };
}

const keyOf = ({ sheetId, col, row }: CellPosition): string => `${sheetId} ${col} ${row}`;
