import { COPY_CANCELLED, copyFileName, copyOutcome, dayOf } from "../copyOutcome";
import type { CopyKind, CopyOutcome, Watch } from "../host";
import packageJson from "../../../package.json";
import { base64 } from "./base64";
import { sentenceOf } from "./faults";
import { readBook } from "./readBook";

/**
 * Makes a copy as a new workbook, which Excel is asked to open beside the one at hand; that one is only read. Excel may
 * refuse, and a browser may stop the new tab without a word, so the copy is handed back as a file as well.
 *
 * Excel's setting that stops its prompt to install an add-in (Office.DisableTrustUX) is not needed: it belongs to a
 * document, the copy holds no formula of ours and no trace of the add-in, so nobody is prompted there. Setting it
 * in the workbook at hand would change that one, and stop its prompt for the people who want the add-in.
 */
export async function shareCopy(kind: CopyKind, { progress, signal }: Watch): Promise<CopyOutcome> {
  const step = (done: number, what: string): void => {
    progress(done, 4, what);
    signal.throwIfAborted();
  };
  try {
    step(0, "Reading the workbook");
    const book = await readBook();
    step(1, "Translating the formulas");
    const { clubCopy } = await import("../../share/clubCopy");
    const day = dayOf(new Date());
    const copy = clubCopy(book, { kind, date: day, version: packageJson.version });
    step(2, "Writing the copy");
    const { writeBook } = await import("../file/writeBook");
    const bytes = await writeBook(copy.book, { title: copy.book.workbook.name, recalculate: kind === "formulas" });
    step(3, "Opening the copy");
    const refused = await Excel.createWorkbook(base64(bytes)).then(() => null, sentenceOf);
    progress(4, 4, "Done");
    const file = { name: copyFileName(book, kind, day), bytes };
    return { ...copyOutcome(copy.book.workbook.name, copy), opening: { refused, file } };
  } catch (fault) {
    if (signal.aborted) return COPY_CANCELLED;
    return { made: false, why: `${sentenceOf(fault)} No copy was made.` };
  }
}
