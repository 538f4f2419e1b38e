import type { SearchedSoFar } from "../../../core/network/sizes/chooseSizes";
import type { FunctionAnswer, Matrix } from "../../functions/callFunction";
import type { AskedOfSearch, ToldBySearch } from "./sizesWorker";

/** Runs that are solved at most: about a minute; a cell stops at a fiftieth of it. */
export const MOST_SOLVED = 3_000_000;

/**
 * Searches in a worker, which ends with the search or as soon as it is cancelled.
 *
 * @param start makes the worker
 * @throws an error with a sentence where it is cancelled or the worker cannot start
 */
export function searchSizes(
  args: readonly Matrix[],
  { hear, signal }: { readonly hear: (far: SearchedSoFar) => void; readonly signal: AbortSignal },
  start: () => Worker,
): Promise<FunctionAnswer> {
  return new Promise((resolve, reject) => {
    const worker = start();
    const end = (): void => {
      worker.terminate();
      signal.removeEventListener("abort", stop);
    };
    const stop = (): void => {
      end();
      reject(new Error("cancelled"));
    };
    signal.addEventListener("abort", stop);
    worker.addEventListener("message", ({ data }: MessageEvent<ToldBySearch>) => {
      if ("far" in data) return hear(data.far);
      end();
      resolve(data.answer);
    });
    worker.addEventListener("error", () => {
      end();
      reject(new Error("the functions could not be loaded: load the pane again"));
    });
    worker.postMessage({ args, most: MOST_SOLVED } satisfies AskedOfSearch);
  });
}
