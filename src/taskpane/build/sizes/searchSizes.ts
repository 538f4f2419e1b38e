import type { SearchedSoFar } from "../../../core/network/sizes/chooseSizes";
import type { FunctionAnswer, Matrix } from "../../functions/callFunction";
import type { AskedOfSearch, ToldBySearch } from "./sizesWorker";

const [LEAST, MOST] = [200_000, 3_000_000];

/** Runs that are solved at most, by how many there are: a second or two for fifteen runs, five or so for forty. */
export const mostSolved = ([runs]: readonly Matrix[]): number =>
  Math.min(MOST, Math.max(LEAST, 1000 * (runs?.length ?? 0) ** 2));

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
    worker.postMessage({ args, most: mostSolved(args) } satisfies AskedOfSearch);
  });
}
