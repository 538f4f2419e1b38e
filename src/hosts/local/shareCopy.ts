import packageJson from "../../../package.json";
import type { CopyMaker } from "../copyInWorker";
import { COPY_CANCELLED, COPY_STEPS, copyFileName, copyOutcome, dayOf } from "../copyOutcome";
import type { AddOutcome, CopyKind, CopyOutcome, Watch } from "../host";
import { calculatedOf } from "./readGrid";
import type { Desk } from "./desk";
import { nextTurn } from "./nextTurn";
import { whyNotLive } from "../whyNotLive";

/** Makes a copy for people without the functions, as a file among the browser's downloads. The open budget is only read. */
export async function shareCopy(desk: Desk, kind: CopyKind, watch: Watch, make: CopyMaker): Promise<CopyOutcome> {
  const { progress, signal } = watch;
  const steps = COPY_STEPS.length + 1;
  progress(0, steps, COPY_STEPS[0]);
  await nextTurn();
  try {
    signal.throwIfAborted();
    const [book, day] = [calculatedOf(desk.model()), dayOf(new Date())];
    const order = { kind, date: day, version: packageJson.version };
    const copy = await make(book, order, (index) => progress(index, steps, COPY_STEPS[index]!), signal);
    signal.throwIfAborted();
    if (!copy.made) return copy;
    const name = copyFileName(book, kind, day);
    desk.download(copy.bytes, name);
    progress(steps, steps, "Done");
    return copyOutcome(name, copy);
  } catch (fault) {
    if (signal.aborted) return COPY_CANCELLED;
    throw fault;
  }
}

/** Opens the live budget that a club copy was made from, in place of the copy. */
export async function reviveCopy(desk: Desk, watch: Watch): Promise<AddOutcome> {
  watch.progress(0, 1, "Reading the copy");
  await nextTurn();
  const { revive } = await import("../../share/revive/revive");
  const { movedWords } = await import("../movedNumbers");
  const copy = calculatedOf(desk.model());
  const { workbook: live, left } = revive(copy);
  if (live === null) return { added: false, why: whyNotLive(left, "nothing changed") };
  if (watch.signal.aborted) return { added: false, why: "Cancelled: nothing changed." };
  if (!(await desk.open({ workbook: live, file: "air-budget.xlsx", unsaved: true }, "The live budget")))
    return { added: false, why: "You kept the copy as it is." };
  const moved = movedWords({ workbook: live, shown: copy.shown }, calculatedOf(desk.model()).shown, "copy");
  watch.progress(1, 1, "Done");
  return { added: true, sheets: live.sheets.map(({ name }) => name), left, moved };
}
