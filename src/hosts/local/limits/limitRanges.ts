import { refusedValue, spend } from "./meter";
import type { Value } from "./sizes";
import { cellsInZone, shared, type Zone } from "./zones";

const GATHERING = 3; // visits that a cell of a range counts when the range is put together

interface Range {
  readonly sheetId: string;
  readonly zone: Zone;
}

/** What the grid puts together for a formula before it calls a function. */
interface Evaluator {
  updateCompilationParameters: () => void;
  compilationParams: { ensureRange: (range: Range) => readonly (readonly (Value | undefined)[])[] };
}

interface Config {
  readonly getters: {
    readonly tryGetSheet: (sheetId: string) => unknown;
    readonly getSheetZone: (sheetId: string) => Zone;
  };
}

/** Counts ranges as well: sums over ever longer ranges would fill the memory before any function is called. */
export function limitRanges(): void {
  const registry = o_spreadsheet.registries.coreViewsPluginRegistry;
  const Evaluation = registry.get("evaluation") as unknown as new (config: Config) => { evaluator: Evaluator };
  class Limited extends Evaluation {
    constructor(config: Config) {
      super(config);
      const { evaluator } = this;
      const update = evaluator.updateCompilationParameters.bind(evaluator);
      evaluator.updateCompilationParameters = () => {
        update();
        const { compilationParams } = evaluator;
        const gather = compilationParams.ensureRange;
        compilationParams.ensureRange = (range) =>
          spend(GATHERING * cellsThere(range, config)) ? gather(range) : [[refusedValue()]];
      };
    }
  }
  registry.replace("evaluation", Limited as never);
}

/** Cells of a range as far as its sheet goes; a sheet that is gone has none. */
const cellsThere = ({ sheetId, zone }: Range, { getters }: Config): number =>
  getters.tryGetSheet(sheetId) === undefined ? 0 : cellsInZone(shared(zone, getters.getSheetZone(sheetId)));
