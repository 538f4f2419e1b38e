import type { Calculated, Shown } from "../../sheets/calculated";
import { readBook } from "./readBook";

const MOST_READINGS = 4;

/**
 * The book when two readings of it show the same; null where they do not. While a function of ours computes anew, newer Excels go on
 * showing its last answer, with a mark that no request tells of (office-js issues 4152 and 6930), and a reading of many sheets takes longer
 * than most answers do.
 */
export async function readSettled(signal: AbortSignal): Promise<Calculated | null> {
  let before = await readBook();
  for (let reading = 2; reading <= MOST_READINGS; reading++) {
    signal.throwIfAborted();
    const now = await readBook();
    if (wordsOf(now.shown) === wordsOf(before.shown)) return now;
    before = now;
  }
  return null;
}

const wordsOf = (shown: Shown): string => JSON.stringify([...shown].map(([sheet, cells]) => [sheet, [...cells]]));
