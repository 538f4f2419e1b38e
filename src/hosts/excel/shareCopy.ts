import type { CopyMaker } from "../copyInWorker";
import { COPY_CANCELLED, COPY_STEPS, copyFileName, copyOutcome, dayOf } from "../copyOutcome";
import type { CopyKind, CopyOutcome, Watch } from "../host";
import packageJson from "../../../package.json";
import { base64 } from "./base64";
import { firstBusy } from "./busy";
import { sentenceOf } from "./faults";
import { NO_OLD_COPY } from "./manual";
import { readBook } from "./readBook";
import { readSettled } from "./readSettled";

/**
 * Makes a copy as a new workbook, which Excel is asked to open beside the one at hand; that one is only read. Excel may
 * refuse, and a browser may stop the new tab without a word, so the copy is handed back as a file as well.
 *
 * Excel's setting that stops its prompt to install an add-in (Office.DisableTrustUX) is not needed: it belongs to a
 * document, the copy holds no formula of ours and no trace of the add-in, so nobody is prompted there. Setting it
 * in the workbook at hand would change that one, and stop its prompt for the people who want the add-in.
 */
export async function shareCopy(kind: CopyKind, { progress, signal }: Watch, make: CopyMaker): Promise<CopyOutcome> {
  const steps = COPY_STEPS.length + 2;
  const step = (done: number, what: string): void => {
    progress(done, steps, what);
    signal.throwIfAborted();
  };
  try {
    step(0, "Reading the workbook");
    // a copy of formulas is computed and compared with the book; one of values is what the cells show just now
    const book = kind === "values" ? await readSettled(signal) : await readBook();
    if (book === null) return { made: false, why: UNSETTLED };
    if (book.settings?.includes("calculates when asked")) return { made: false, why: NO_OLD_COPY };
    const waiting = firstBusy(book);
    if (waiting !== null) return { made: false, why: waitsFor(waiting) };
    const day = dayOf(new Date());
    const order = { kind, date: day, version: packageJson.version };
    const copy = await make(book, order, (index) => progress(1 + index, steps, COPY_STEPS[index]!), signal);
    if (!copy.made) return copy;
    step(steps - 1, "Opening the copy");
    const refused = await Excel.createWorkbook(base64(copy.bytes)).then(() => null, sentenceOf);
    progress(steps, steps, "Done");
    const file = { name: copyFileName(book, kind, day), bytes: copy.bytes };
    return { ...copyOutcome(book.workbook.name, copy), opening: { refused, file } };
  } catch (fault) {
    if (signal.aborted) return COPY_CANCELLED;
    return { made: false, why: `${sentenceOf(fault)} No copy was made.` };
  }
}

const UNSETTLED =
  "The cells go on changing, so a copy could hold numbers of before: wait until Excel has finished calculating, then make it again. No copy was made.";

const waitsFor = (cell: string): string =>
  `${cell} still waits for its answer, so a copy would lack it: wait a moment, then make it again, or enter it anew by Repair below. No copy was made.`;
