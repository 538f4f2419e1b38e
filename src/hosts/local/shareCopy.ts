import packageJson from "../../../package.json";
import { FileRefusal } from "../file/fileRefusal";
import { COPY_CANCELLED, copyFileName, copyOutcome, dayOf } from "../copyOutcome";
import type { AddOutcome, CopyKind, CopyOutcome, Watch } from "../host";
import { calculatedOf } from "./readGrid";
import type { Desk } from "./desk";
import { nextTurn } from "./nextTurn";
import { whyNotLive } from "../whyNotLive";

/** Makes a copy for people without the functions, as a file among the browser's downloads. The open budget is only read. */
export async function shareCopy(desk: Desk, kind: CopyKind, watch: Watch): Promise<CopyOutcome> {
  const step = async (done: number, what: string): Promise<boolean> => {
    watch.progress(done, 3, what);
    await nextTurn();
    return watch.signal.aborted;
  };
  if (await step(0, "Translating the formulas")) return COPY_CANCELLED;
  const { clubCopy } = await import("../../share/clubCopy");
  const [book, day] = [calculatedOf(desk.model()), dayOf(new Date())];
  const copy = clubCopy(book, { kind, date: day, version: packageJson.version });
  if (await step(1, "Writing the file")) return COPY_CANCELLED;
  const { writeBook } = await import("../file/writeBook");
  const { name: title } = copy.book.workbook;
  try {
    const bytes = await writeBook(copy.book, { title, recalculate: kind === "formulas" });
    if (await step(2, "Handing it to the browser")) return COPY_CANCELLED;
    const name = copyFileName(book, kind, day);
    desk.download(bytes, name);
    watch.progress(3, 3, "Done");
    return copyOutcome(name, copy);
  } catch (error) {
    if (error instanceof FileRefusal) return { made: false, why: error.message };
    throw error;
  }
}

/** Opens the live budget that a club copy was made from, in place of the copy. */
export async function reviveCopy(desk: Desk, watch: Watch): Promise<AddOutcome> {
  watch.progress(0, 1, "Reading the copy");
  await nextTurn();
  const { revive } = await import("../../share/revive/revive");
  const { workbook: live, left } = revive(calculatedOf(desk.model()));
  if (live === null) return { added: false, why: whyNotLive(left, "nothing changed") };
  if (watch.signal.aborted) return { added: false, why: "Cancelled: nothing changed." };
  if (!(await desk.open({ workbook: live, file: "air-budget.xlsx", unsaved: true }, "The live budget")))
    return { added: false, why: "You kept the copy as it is." };
  watch.progress(1, 1, "Done");
  return { added: true, sheets: live.sheets.map(({ name }) => name), left };
}
