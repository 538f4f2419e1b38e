import { valueAt } from "../../reference/itemAt";
import type { Calculated } from "../../sheets/calculated";
import type { Workbook } from "../../sheets/workbook";
import type { AddOutcome, Watch } from "../host";
import { whyNotLive } from "../whyNotLive";
import { addNewSheets } from "./addNewSheets";
import { BUSY_TURNS, firstBusy, PAUSE } from "./busy";
import { sentenceOf } from "./faults";
import { readBook } from "./readBook";
import { readSettled } from "./readSettled";
import { renamed } from "./renamed";

/** Adds the live budget that a club copy was made from, in new sheets beside the copy's. */
export async function revive(watch: Watch): Promise<AddOutcome> {
  try {
    const copy = await readBook();
    const { revive: revived } = await import("../../share/revive/revive");
    const { workbook, left } = revived(copy);
    if (workbook === null) return { added: false, why: whyNotLive(left, "nothing was added") };
    const outcome = await addNewSheets(async (stock) => renamed(workbook, stock), watch);
    if (!outcome.added) return outcome;
    const moved = await movedSince(workbook, copy, outcome.sheets, watch).catch(() => NOT_COMPARED);
    return { ...outcome, left, moved };
  } catch (fault) {
    return { added: false, why: `${sentenceOf(fault)} Nothing was added.` };
  }
}

const NOT_COMPARED =
  "The numbers of the new sheets were not compared with the copy's: look at both before you go by them, since another version may have computed the copy.";

/** What is told where the sheets that were added, which stay whatever comes of this, come to other numbers than the copy's. */
async function movedSince(
  { sheets, ...rest }: Workbook,
  copy: Calculated,
  added: readonly string[],
  { progress, signal }: Watch,
): Promise<string> {
  progress(0, 1, "Comparing with the copy's numbers");
  const now = await answered(signal);
  if (now === null) return NOT_COMPARED;
  const names = new Map(sheets.map(({ name }, place) => [name, added[place]!]));
  const renamedSheets = sheets.map((sheet) => ({ ...sheet, name: valueAt(names, sheet.name) }));
  const shown = new Map([...copy.shown].flatMap(([name, cells]) => (names.has(name) ? [[valueAt(names, name), cells] as const] : []))); // prettier-ignore
  const { movedWords } = await import("../movedNumbers"); // kept out of what the pane loads at first
  return movedWords({ workbook: { ...rest, sheets: renamedSheets }, shown }, now.shown, "copy");
}

/** The book once no function waits any more and two readings agree; null where that does not come. */
async function answered(signal: AbortSignal): Promise<Calculated | null> {
  for (let turn = 0; turn < BUSY_TURNS; turn++) {
    const book = await readSettled(signal);
    if (book === null || firstBusy(book) === null) return book;
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
  }
  return null;
}
