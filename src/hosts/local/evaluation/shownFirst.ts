import type { CellPosition, GridModel } from "../grid";
import { begin as beginMeasure } from "../limits/meter";
import { addOnce } from "./addOnce";
import { allOnce } from "./allOnce";
import { asBefore } from "./asBefore";
import { cellsOfZone, type Evaluator, type OnceEach, type Ranges } from "./evaluator";
import { longerAnswers } from "./longerAnswers";
import { onceEach } from "./onceEach";
import { restingOn } from "./restingOn";

/** What is still to be computed on the sheets that are not shown. */
export interface Finishing {
  readonly isLeft: () => boolean;
  /** Computes it, or a part of it, until it is told to stop. */
  readonly finish: (stop?: () => boolean) => void;
  readonly isWhole: () => boolean; // the whole book is to be computed, as when it is opened
  /** Gives it up: the whole book is about to be computed anew. */
  readonly leaveToNext: () => void;
}

interface Left {
  readonly sheets: Map<string, Iterator<CellPosition>>; // what is left of each
  readonly settled: Set<string>; // sheets that are computed, and that nothing of the others changes
  readonly by: OnceEach;
  readonly byLibrary: () => void; // where it cannot be done otherwise
  readonly couldChange: (sheetId: string) => Iterable<CellPosition>; // what of it could change a sheet though that is computed
  readonly cells: Ranges | null; // all that were cleared, on the computed sheets too; null where that is the whole book
}

/**
 * Computes what the shown sheet shows, after a change and when a book is opened, and leaves the other sheets for later: each
 * is computed when one of its cells is asked for, whoever asks, or when nothing else is to be done. So nobody sees a number
 * of before the change, or a blank for one that is to come.
 */
export function shownFirst(evaluator: Evaluator, getters: GridModel["getters"]): Finishing {
  const once = onceEach(evaluator, getters);
  const all = allOnce(evaluator, getters);
  const longer = longerAnswers(evaluator, getters);
  let left: Left | null = null;

  const before = asBefore(evaluator, getters);
  const { evaluateAllCells } = evaluator;
  const added = addOnce(evaluator, longer.forget);

  function allByLibrary(): void {
    longer.forget();
    added.forget();
    evaluateAllCells.call(evaluator);
  }

  evaluator.evaluateAllCells = () => {
    left = null;
    if (getters.getPivotIds().length > 0) return allByLibrary();
    longer.forget();
    added.forget();
    before.forgetAll();
    all.begin();
    left = {
      sheets: new Map(getters.getSheetIds().map((sheetId) => [sheetId, cellsOn(sheetId)])),
      settled: new Set(),
      by: all,
      byLibrary: () => {
        beginMeasure(); // what was computed in vain is not counted
        evaluator.buildDependencyGraph();
        allByLibrary();
      },
      couldChange: () => [],
      cells: null,
    };
    forSheet(getters.getActiveSheetId());
  };

  evaluator.evaluateCells = (changed) => {
    if (isWhole()) finish();
    changed.forEach(before.forget);
    const { cells, spills } = restingOn(evaluator, changed, left?.cells ?? []);
    left = null;
    if (!changed.every((position) => isValue(getters.getCell(position)))) longer.forget();
    if (!evaluator.blockedArrayFormulas.isEmpty() || getters.getPivotIds().length > 0) return byLibrary(cells);
    const shown = getters.getActiveSheetId();
    once.begin(cells, spills);
    if (
      !once.compute(
        positionsOf(cells, (sheetId) => sheetId === shown),
        never,
      )
    )
      return byLibrary(cells);
    const others = [...positionsOf(cells, (sheetId) => sheetId !== shown)].filter(isToCompute);
    if (others.length === 0) return;
    const sheets = new Map<string, Iterator<CellPosition>>();
    for (const sheetId of new Set(others.map((position) => position.sheetId)))
      sheets.set(sheetId, others.filter((position) => position.sheetId === sheetId).values());
    const formulas = others.filter((position) => getters.getCell(position)?.isFormula);
    left = {
      sheets,
      settled: new Set(),
      by: once,
      byLibrary: () => byLibrary(cells),
      couldChange: (sheetId) => formulas.filter(longer.reaching(sheetId)).filter(isToCompute),
      cells,
    };
    forSheet(shown);
  };

  const isToCompute = (position: CellPosition): boolean =>
    !evaluator.evaluatedCells.has(position) && getters.getCell(position) !== undefined;

  function* cellsOn(sheetId: string): Generator<CellPosition> {
    for (const cell of getters.getCells(sheetId)) yield getters.getCellPosition(cell.id);
  }

  function byLibrary(cells: Ranges): void {
    longer.forget();
    evaluator.evaluate(cells);
  }

  function finish(stop = never): void {
    for (let next = nextSheet(); next !== undefined; next = nextSheet()) if (!computeSheet(next, stop)) return;
  }

  const nextSheet = (): string | undefined => left?.sheets.keys().next().value;

  /** False where it was stopped. */
  function computeSheet(sheetId: string, stop: () => boolean): boolean {
    const { sheets } = left!;
    let stopped = false;
    compute(sheets.get(sheetId)!, () => (stopped = stop()));
    if (!stopped) sheets.delete(sheetId);
    if (sheets.size === 0) left = null;
    return !stopped;
  }

  /** Who asks for a cell meanwhile is a formula, which gets what there is. */
  function compute(cells: Iterator<CellPosition>, stop: () => boolean): void {
    const now = left!;
    left = null;
    if (now.by.compute(cells, stop)) left = now;
    else now.byLibrary();
  }

  const isWhole = (): boolean => left?.cells === null;

  /** Whoever asks for a cell of a sheet gets it computed. */
  function forSheet(sheetId?: string): void {
    if (sheetId === undefined) return finish();
    if (left === null || left.settled.has(sheetId)) return;
    if (left.sheets.has(sheetId)) computeSheet(sheetId, never);
    if (left === null) return;
    left.settled.add(sheetId);
    compute(left.couldChange(sheetId)[Symbol.iterator](), never);
  }

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

  const leaveToNext = (): void => {
    left = null;
  };

  return { isLeft: () => left !== null, finish, isWhole, leaveToNext };
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
  for (const range of ranges) if (wanted(range.sheetId)) yield* cellsOfZone(range);
}
