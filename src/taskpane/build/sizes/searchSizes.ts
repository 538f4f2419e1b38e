import type { SearchedSoFar } from "../../../core/network/sizes/chooseSizes";
import { askOnce } from "../../../hosts/askOnce";
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
  return askOnce(
    start,
    { args, most: mostSolved(args) } satisfies AskedOfSearch,
    (told: ToldBySearch) => {
      if ("answer" in told) return { answer: told.answer };
      hear(told.far);
      return "goes on";
    },
    signal,
    "the functions could not be loaded: load the pane again",
  );
}
