import type { CellPosition, GridModel } from "../grid";
import { addOnce } from "./addOnce";
import { asBefore } from "./asBefore";
import type { Evaluator, Ranges } from "./evaluator";
import { longerAnswers } from "./longerAnswers";
import { onceEach } from "./onceEach";
import { restingOn } from "./restingOn";

/** What is still to be computed on the sheets that are not shown. */
export interface Finishing {
  readonly isLeft: () => boolean;
  /** Computes it, or a part of it, until it is told to stop. */
  readonly finish: (stop?: () => boolean) => void;
}

interface Left {
  readonly shown: string; // the sheet of which all is computed
  readonly cells: Ranges; // all that were cleared, on that sheet too
  readonly others: Iterator<CellPosition>;
}

/**
 * Computes after a change what the shown sheet shows, and leaves the other sheets for later: they are computed when one of
 * their cells is asked for, whoever asks, or when nothing else is to be done. So nobody sees a number of before the change.
 */
export function shownFirst(evaluator: Evaluator, getters: GridModel["getters"]): Finishing {
  const once = onceEach(evaluator, getters);
  const longer = longerAnswers(evaluator, getters);
  let left: Left | null = null;

  const before = asBefore(evaluator, getters);
  const { evaluateAllCells } = evaluator;
  const added = addOnce(evaluator, longer.forget);
  evaluator.evaluateAllCells = () => {
    left = null;
    longer.forget();
    added.forget();
    evaluateAllCells.call(evaluator);
  };
  evaluator.evaluateCells = (changed) => {
    changed.forEach(before.forget);
    const { cells, spills } = restingOn(evaluator, changed, left?.cells ?? []);
    left = null;
    if (!changed.every((position) => isValue(getters.getCell(position)))) longer.forget();
    if (!evaluator.blockedArrayFormulas.isEmpty() || getters.getPivotIds().length > 0) return byLibrary(cells);
    const shown = getters.getActiveSheetId();
    once.begin(cells, spills);
    const onShown = positionsOf(cells, (sheetId) => sheetId === shown);
    if (!once.compute(onShown, never)) return byLibrary(cells);
    const others = [...positionsOf(cells, (sheetId) => sheetId !== shown)].filter(isToCompute);
    if (others.length === 0) return;
    left = { shown, cells, others: others.values() };
    const formulas = others.filter((position) => getters.getCell(position)?.isFormula);
    if (longer.couldReach(shown, formulas)) finish();
  };

  const isToCompute = (position: CellPosition): boolean =>
    !evaluator.evaluatedCells.has(position) && getters.getCell(position) !== undefined;

  function byLibrary(cells: Ranges): void {
    longer.forget();
    evaluator.evaluate(cells);
  }

  function finish(stop = never): void {
    if (left === null) return;
    const now = left;
    left = null;
    let stopped = false;
    const isRight = once.compute(now.others, () => (stopped = stop()));
    if (!isRight) byLibrary(now.cells);
    else if (stopped) left = now;
  }

  /** Whoever asks for a cell of another sheet than the shown one gets it computed. */
  const forSheet = (sheetId?: string): void => {
    if (left !== null && left.shown !== sheetId) finish();
  };
  const ofPosition = [
    "getEvaluatedCell",
    "getSpreadZone",
    "getArrayFormulaSpreadingOn",
    "isArrayFormulaSpillBlocked",
  ] as const;
  for (const name of ofPosition) beforehand(evaluator, name, ({ sheetId }: CellPosition) => forSheet(sheetId));
  beforehand(evaluator, "getEvaluatedPositionsInSheet", forSheet);
  for (const name of ["getEvaluatedPositions", "evaluateFormulaResult", "evaluateCompiledFormula"] as const)
    beforehand(evaluator, name, () => forSheet());

  return { isLeft: () => left !== null, finish };
}

const never = (): boolean => false;

/** A number or a text; it is in the way of a longer answer, and fills nothing itself. */
const isValue = (cell: ReturnType<GridModel["getters"]["getCell"]>): boolean =>
  cell !== undefined && !cell.isFormula && cell.content !== "";

type Method = (this: Evaluator, ...args: never[]) => unknown;

/** Has something done before a method of the library. */
function beforehand<Name extends keyof Evaluator>(
  evaluator: Evaluator,
  name: Name,
  then: (...args: never[]) => void,
): void {
  const method = evaluator[name] as Method;
  evaluator[name] = function (...args: never[]) {
    then(...args);
    return method.apply(evaluator, args);
  } as Evaluator[Name];
}

function* positionsOf(ranges: Ranges, wanted: (sheetId: string) => boolean): Generator<CellPosition> {
  for (const { sheetId, zone } of ranges) {
    if (!wanted(sheetId)) continue;
    for (let col = zone.left; col <= zone.right; col++)
      for (let row = zone.top; row <= zone.bottom; row++) yield { sheetId, col, row };
  }
}
