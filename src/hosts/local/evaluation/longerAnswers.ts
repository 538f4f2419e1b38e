import type { CellPosition, GridModel } from "../grid";
import { blanksInReach } from "./blanksInReach";
import { cellsOfZone, type Evaluator, type SheetRange } from "./evaluator";

/** Which formulas would fill blank cells that another sheet rests on, were their answers longer or wider than they are. */
export interface LongerAnswers {
  /** Those of other sheets that could so change a sheet. */
  readonly reaching: (sheetId: string) => (formula: CellPosition) => boolean;
  /** Has it found out anew, since formulas, what they fill or blank cells are others. */
  readonly forget: () => void;
}

/** Formulas below each other that read the same. */
interface Readers {
  readonly range: SheetRange;
  readonly restOn: Set<Readers>; // what changes them, be it by what it fills or by what it would
  readonly blanksOf: CellPosition[]; // formulas that would fill blank cells which these read
}

/** To find out takes a while, and it stays so while numbers and texts are typed over. */
export function longerAnswers(evaluator: Evaluator, getters: GridModel["getters"]): LongerAnswers {
  let all: ReadonlyMap<SheetRange, Readers> | null = null;
  const known = new Map<string, ReadonlySet<string>>(); // by sheet

  /** Whatever a longer answer could change, in any number of steps: what it changes may be longer in turn. */
  function findAll(): Map<SheetRange, Readers> {
    const found = new Map<SheetRange, Readers>(); // the library has one object for all that a formula reads
    const waiting: Readers[] = [];
    const blanksOf = blanksInReach(evaluator, getters);
    const { forest } = evaluator.formulaDependencies();
    const readersOf = ({ sheetId, zone }: SheetRange): Set<Readers> => {
      const readers = new Set<Readers>();
      for (let col = zone.left; col <= zone.right; col++)
        for (const { dependents } of forest[sheetId]?.[col]?.query(zone) ?? []) {
          let one = found.get(dependents);
          if (one === undefined) {
            one = { range: dependents, restOn: new Set(), blanksOf: [] };
            found.set(dependents, one);
            waiting.push(one);
          }
          readers.add(one);
        }
      return readers;
    };
    for (const sheetId of getters.getSheetIds())
      for (const cell of getters.getCells(sheetId)) {
        if (!cell.isFormula) continue;
        const formula = getters.getCellPosition(cell.id);
        for (const blanks of blanksOf([formula])) for (const one of readersOf(blanks)) one.blanksOf.push(formula);
      }
    for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
      const formulas = [...cellsOfZone(one.range)].filter((position) => getters.getCell(position)?.isFormula === true);
      const filled = formulas.flatMap((formula): SheetRange[] => {
        const zone = evaluator.spreadingRelations.getArrayResultZone(formula);
        return zone === undefined ? [] : [{ sheetId: formula.sheetId, zone }];
      });
      for (const changed of [one.range, ...filled, ...blanksOf(formulas)])
        for (const other of readersOf(changed)) other.restOn.add(one);
    }
    return found;
  }

  function reachingOf(sheetId: string): ReadonlySet<string> {
    all ??= findAll();
    const seen = new Set([...all.values()].filter(({ range }) => range.sheetId === sheetId));
    const formulas = new Set<string>();
    for (const one of seen) {
      for (const other of one.restOn) seen.add(other);
      for (const formula of one.blanksOf) if (formula.sheetId !== sheetId) formulas.add(keyOf(formula));
    }
    return formulas;
  }

  return {
    reaching: (sheetId) => {
      const formulas = known.get(sheetId) ?? reachingOf(sheetId);
      known.set(sheetId, formulas);
      return (formula) => formulas.has(keyOf(formula));
    },
    forget: () => {
      all = null;
      known.clear();
    },
  };
}

const keyOf = ({ sheetId, col, row }: CellPosition): string => `${sheetId} ${col} ${row}`;
