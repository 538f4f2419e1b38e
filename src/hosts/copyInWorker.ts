import type { CopyOrder } from "../share/copy";
import type { Calculated } from "../sheets/calculated";
import { askOnce } from "./askOnce";
import type { AskedOfCopier, ToldByCopier } from "./copyWorker";
import type { MadeCopy } from "./makeCopy";

/** Makes a copy beside whatever the page does. It rejects with the signal's reason where it was cancelled. */
export type CopyMaker = (
  book: Calculated,
  order: CopyOrder,
  step: (index: number) => void,
  signal: AbortSignal,
) => Promise<MadeCopy>;

/** The maker of the pages: a worker, which ends with the copy or as soon as it is cancelled. */
export const copierOf =
  (start: () => Worker): CopyMaker =>
  (book, order, step, signal) =>
    askOnce(
      start,
      { book, order } satisfies AskedOfCopier,
      (told: ToldByCopier) => {
        if ("failed" in told) throw new Error(told.failed);
        if ("made" in told) return { answer: told.made };
        step(told.step);
        return "goes on";
      },
      signal,
      "what makes a copy could not be loaded: load the page again",
    );

export const copyInWorker = copierOf(() => new Worker(new URL("./copyWorker.ts", import.meta.url)));
