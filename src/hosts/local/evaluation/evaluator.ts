import type { CellPosition } from "../grid";
import type { Zone } from "../limits/zones";

/** What the grid's library computes cells with, as far as we steer it. */
export interface Evaluator {
  readonly blockedArrayFormulas: { isEmpty: () => boolean; has: (position: CellPosition) => boolean };
  evaluatedCells: {
    readonly get: (position: CellPosition) => EvaluatedCell | undefined;
    readonly has: (position: CellPosition) => boolean;
    readonly set: (position: CellPosition, cell: EvaluatedCell) => void;
  };
  readonly spreadingRelations: {
    readonly arrayFormulasToResults: { readonly keys: () => CellPosition[] };
    readonly getArrayResultZone: (position: CellPosition) => Zone | undefined;
  };
  readonly nextRangesToUpdate: Ranges;
  readonly formulaDependencies: () => {
    readonly forest: Readonly<Partial<Record<string, Readonly<Partial<Record<number, ColumnReaders>>>>>>; // by sheet and column
    readonly getCellsDependingOn: (ranges: Iterable<SheetRange>, visited: Ranges) => Ranges;
  };
  readonly getArrayFormulasImpactedByChangesOf: (positions: readonly CellPosition[]) => Ranges;
  readonly buildDependencyGraph: () => void;
  readonly clearEvaluatedRanges: (ranges: Iterable<SheetRange>) => void;
  readonly evaluate: (ranges: Iterable<SheetRange>) => void;
  readonly computeAndSave: (position: CellPosition) => EvaluatedCell;
  readonly computeDependencies: (ranges: readonly SheetRange[]) => void;
  cellsBeingComputed: Set<number>;
  compilationParams: CompilationParams;
  addDependencies: (formula: CellPosition, ranges: readonly SheetRange[]) => void;
  evaluateCells: (positions: readonly CellPosition[]) => void;
  evaluateAllCells: () => void;
  computeCell: (position: CellPosition) => EvaluatedCell;
  computeFormulaCell: (position: CellPosition, cell: FormulaCell) => EvaluatedCell;
  updateCompilationParameters: () => void;
  invalidateSpreading: (position: CellPosition) => void;
  invalidatePositionsDependingOnSpread: (sheetId: string, zone: Zone) => void;
  getEvaluatedCell: (position: CellPosition) => EvaluatedCell;
  getSpreadZone: (position: CellPosition, ...more: unknown[]) => Zone | undefined;
  getArrayFormulaSpreadingOn: (position: CellPosition) => CellPosition | undefined;
  isArrayFormulaSpillBlocked: (position: CellPosition) => boolean;
  getEvaluatedPositions: () => CellPosition[];
  getEvaluatedPositionsInSheet: (sheetId: string) => CellPosition[];
  evaluateFormulaResult: (...formula: unknown[]) => unknown;
  evaluateCompiledFormula: (...formula: unknown[]) => unknown;
}

export interface EvaluatedCell {
  readonly value: unknown;
  readonly format?: string;
  readonly message?: unknown;
  readonly errorOriginPosition?: CellPosition;
}

export interface FormulaCell {
  readonly compiledFormula: { readonly symbols: readonly string[] };
}

/** What a formula is given where it names a cell or a range: cells by column. */
export type Given = EvaluatedCell | GivenCells;
export type GivenCells = readonly (readonly EvaluatedCell[])[];

interface CompilationParams {
  referenceDenormalizer: (from: SheetRange) => EvaluatedCell;
  ensureRange: (from: SheetRange) => GivenCells;
}

export interface SheetRange {
  readonly sheetId: string;
  readonly zone: Zone;
}

/** The formulas that read cells of a column. */
interface ColumnReaders {
  readonly query: (rows: Zone) => readonly { readonly dependents: SheetRange }[];
}

/** A set of ranges, in which cells count. */
export interface Ranges extends Iterable<SheetRange> {
  readonly add: (range: SheetRange) => void;
  readonly has: (range: SheetRange) => boolean;
  readonly copy: () => Ranges;
  readonly clear: () => void;
  readonly addMany: (ranges: Iterable<SheetRange>) => void;
  readonly addManyPositions: (positions: readonly CellPosition[]) => void;
  readonly hasPosition: (position: CellPosition) => boolean;
}

/** Computes cells, each once, after what it rests on. */
export interface OnceEach {
  /**
   * Computes cells until it is told to stop. False where it cannot be known in this way what they show: the library must
   * compute all of them in its own way then.
   */
  readonly compute: (cells: Iterator<CellPosition>, stop: () => boolean) => boolean;
}

export function* cellsOfZone({ sheetId, zone }: SheetRange): Generator<CellPosition> {
  for (let col = zone.left; col <= zone.right; col++)
    for (let row = zone.top; row <= zone.bottom; row++) yield { sheetId, col, row };
}

export const isInside = ({ col, row }: CellPosition, zone: Zone): boolean =>
  zone.left <= col && col <= zone.right && zone.top <= row && row <= zone.bottom;

export const isSameZone = (one: Zone | undefined, other: Zone | undefined): boolean =>
  one === other ||
  (one !== undefined &&
    other !== undefined &&
    one.left === other.left &&
    one.right === other.right &&
    one.top === other.top &&
    one.bottom === other.bottom);
