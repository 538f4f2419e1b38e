import { FileRefusal } from "../file/fileRefusal";
import type { BookInFile } from "./files";
import type { OpenBook } from "./openBook";
import type { NoticeBar } from "./notifications";

/**
 * What this browser kept, as far as a sheet can hold it. Where that is too much its user decides, since there may be no file of
 * it; null where it is not opened, so that what is kept stays as it is.
 */
export async function keptHere(kept: OpenBook, bar: Pick<NoticeBar, "ask">): Promise<BookInFile | null> {
  const { fitted, leftOutWords } = await import("../fit/fitted");
  try {
    const { workbook, leftOut } = fitted(kept.workbook);
    return { book: { ...kept, workbook }, words: leftOutWords(leftOut) };
  } catch (error) {
    if (!(error instanceof FileRefusal)) {
      console.error(error);
      return null;
    }
    const question = `What this browser kept may take minutes to open, or never end. ${error.message}`;
    return (await bar.ask(question, ["Open it all the same", "Leave it"])) === 0 ? { book: kept, words: "" } : null;
  }
}
