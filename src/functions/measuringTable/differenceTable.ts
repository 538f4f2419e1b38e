import type { Difference } from "../../core/measuring/difference";
import { differenceColumns, type DifferenceKey } from "../../reference/answerColumns";
import { BELOW_NOTHING, differenceWords } from "../../reference/differenceWords";
import { answerRow, headerRow, type Value } from "../answerRows";

/**
 * The answer of DIFFERENCE: a header and one row, a cell empty where there is nothing to say.
 *
 * @param isBelow whether a reading is below 0
 */
export function differenceTable(
  { before, after, change, limit, needed, says }: Difference,
  isBelow: boolean,
): Value[][] {
  const row: Record<DifferenceKey, Value | null> = {
    before,
    after,
    change,
    limit,
    percent: before === 0 ? null : (100 * change) / Math.abs(before),
    verdict: `${differenceWords[says]}${isBelow ? BELOW_NOTHING : ""}`,
    needed,
  };
  return [headerRow(differenceColumns, "IP"), answerRow(differenceColumns, row, "IP")];
}
