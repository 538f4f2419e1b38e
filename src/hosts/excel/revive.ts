import type { AddOutcome, Watch } from "../host";
import { addNewSheets } from "./addNewSheets";
import { sentenceOf } from "./faults";
import { readBook } from "./readBook";
import { renamed } from "./renamed";
import { whyNotLive } from "../whyNotLive";

/** Adds the live budget that a club copy was made from, in new sheets beside the copy's. */
export async function revive(watch: Watch): Promise<AddOutcome> {
  try {
    const copy = await readBook();
    const { revive: revived } = await import("../../share/revive/revive");
    const { workbook, left } = revived(copy);
    if (workbook === null) return { added: false, why: whyNotLive(left, "nothing was added") };
    const outcome = await addNewSheets(async (stock) => renamed(workbook, stock), watch);
    return outcome.added ? { ...outcome, left } : outcome;
  } catch (fault) {
    return { added: false, why: `${sentenceOf(fault)} Nothing was added.` };
  }
}
