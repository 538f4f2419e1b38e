import type { CopyOrder } from "../share/copy";
import type { Calculated } from "../sheets/calculated";
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
    new Promise((resolve, reject) => {
      signal.throwIfAborted();
      const worker = start();
      const end = (): void => {
        worker.terminate();
        signal.removeEventListener("abort", stop);
      };
      const stop = (): void => {
        end();
        reject(signal.reason as Error);
      };
      signal.addEventListener("abort", stop);
      worker.addEventListener("message", ({ data }: MessageEvent<ToldByCopier>) => {
        if ("step" in data) return step(data.step);
        end();
        if ("made" in data) resolve(data.made);
        else reject(new Error(data.failed));
      });
      worker.addEventListener("error", () => {
        end();
        reject(new Error("what makes a copy could not be loaded: load the page again"));
      });
      worker.postMessage({ book, order } satisfies AskedOfCopier);
    });

export const copyInWorker = copierOf(() => new Worker(new URL("./copyWorker.ts", import.meta.url)));
