import type { GridModel } from "../grid";
import type { Evaluator } from "./evaluator";
import { type Finishing, shownFirst } from "./shownFirst";

const PAUSE = 100; // ms without a change before the sheets that are not shown are computed
export const TURN = 8; // ms of that before what waits goes first: a key, the page's drawing

interface Config {
  readonly getters: GridModel["getters"];
}

interface Evaluation {
  readonly evaluator: Evaluator;
  readonly shouldRebuildDependenciesGraph: boolean; // all is computed anew after the command
  beforeHandle(command: { readonly type: string }): void;
}

export interface WithFinishing {
  getFinishing(): Finishing;
}

/** Has the grid compute the shown sheet first, and the others when they are asked for or nobody does anything. */
export function evaluateShownFirst(): void {
  const registry = o_spreadsheet.registries.coreViewsPluginRegistry;
  const Library = registry.get("evaluation") as unknown as { new (config: Config): Evaluation; getters: string[] };
  class ShownFirst extends Library implements WithFinishing {
    static override getters = [...Library.getters, "getFinishing"];
    finishing: Finishing;
    constructor(config: Config) {
      super(config);
      this.finishing = shownFirst(this.evaluator, config.getters);
    }

    /**
     * Where rows come, go or move, what is left has to be computed before; so has the whole of a book that was opened, before anything is
     * entered. What is undone or done again is so already, and cells that were left may be gone.
     */
    override beforeHandle(command: { readonly type: string }): void {
      super.beforeHandle(command);
      if (command.type === "UNDO" || command.type === "REDO") return this.finishing.leaveToNext();
      const isEntry = command.type === "UPDATE_CELL" && this.finishing.isWhole();
      if (this.shouldRebuildDependenciesGraph || isEntry) this.finishing.finish();
    }

    getFinishing(): Finishing {
      return this.finishing;
    }
  }
  registry.replace("evaluation", ShownFirst as never);

  class FinishPlugin extends o_spreadsheet.UIPlugin {
    private isOpened = false;
    private timer: ReturnType<typeof setTimeout> | undefined;

    /** Of a book that is opened nothing more is computed until the page has painted it, or somebody asks. */
    override finalize(): void {
      if (this.isOpened && this.finishing().isLeft()) this.soon(PAUSE);
      this.isOpened = true;
    }

    private soon(pause: number): void {
      clearTimeout(this.timer);
      this.timer = setTimeout(() => this.finishAPart(), pause);
    }

    private finishAPart(): void {
      const { finish, isLeft } = this.finishing();
      const end = performance.now() + TURN;
      finish(() => performance.now() > end);
      if (isLeft()) this.soon(0);
    }

    private finishing(): Finishing {
      return (this.getters as unknown as WithFinishing).getFinishing();
    }
  }
  o_spreadsheet.registries.featurePluginRegistry.add("finish_cells", FinishPlugin);
}
