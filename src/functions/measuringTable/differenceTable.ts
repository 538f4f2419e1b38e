import type { Difference } from "../../core/measuring/difference";
import { differenceColumns, type DifferenceKey } from "../../reference/answerColumns";
import { differenceWords } from "../../reference/differenceWords";
import { answerRow, headerRow, type Value } from "../answerRows";

/** The answer of DIFFERENCE: a header and one row, a cell empty where there is nothing to say. */
export function differenceTable({ before, after, change, limit, needed, says }: Difference): Value[][] {
  const row: Record<DifferenceKey, Value | null> = {
    before,
    after,
    change,
    limit,
    percent: before === 0 ? null : (100 * change) / before,
    verdict: differenceWords[says],
    needed,
  };
  return [headerRow(differenceColumns, "IP"), answerRow(differenceColumns, row, "IP")];
}
