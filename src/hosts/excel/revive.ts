import type { AddOutcome, Watch } from "../host";
import { addNewSheets } from "./addNewSheets";
import { sentenceOf } from "./faults";
import { readBook } from "./readBook";
import { renamed } from "./renamed";

const NONE = "This workbook is no club copy that recorded how to come back, so nothing was added.";

/** Adds the live budget that a club copy was made from, in new sheets beside the copy's. */
export async function revive(watch: Watch): Promise<AddOutcome> {
  try {
    const copy = await readBook();
    const { revive: revived } = await import("../../share/revive");
    const workbook = revived(copy);
    if (workbook === null) return { added: false, why: NONE };
    return await addNewSheets(async (stock) => renamed(workbook, stock), watch);
  } catch (fault) {
    return { added: false, why: `${sentenceOf(fault)} Nothing was added.` };
  }
}
