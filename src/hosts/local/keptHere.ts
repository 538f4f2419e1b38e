import { FileRefusal } from "../file/fileRefusal";
import packageJson from "../../../package.json";
import type { BookInFile } from "./files";
import type { KeptBook } from "./keeper";
import type { NoticeBar } from "./notifications";

/**
 * What this browser kept, as far as a sheet can hold it. Where that is too much its user decides, since there may be no file of
 * it; null where it is not opened, so that what is kept stays as it is.
 */
export async function keptHere(
  { keptBy, ...kept }: KeptBook,
  bar: Pick<NoticeBar, "ask">,
): Promise<Pick<BookInFile, "book" | "words"> | null> {
  const { fitted, leftOutWords } = await import("../fit/fitted");
  try {
    const { workbook, leftOut } = fitted(kept.workbook);
    const words = [leftOutWords(leftOut), keptByWords(keptBy)].filter((sentence) => sentence !== "");
    return { book: { ...kept, workbook }, words: words.join(" ") };
  } catch (error) {
    if (!(error instanceof FileRefusal)) {
      console.error(error);
      return null;
    }
    const question = `What this browser kept may take minutes to open, or never end. ${error.message}`;
    return (await bar.ask(question, ["Open it all the same", "Leave it"])) === 0
      ? { book: kept, words: keptByWords(keptBy) }
      : null;
  }
}

/** No numbers are kept, only what they rest on, so that which ones moved cannot be told. */
const keptByWords = (keptBy: string | undefined): string =>
  keptBy === packageJson.version
    ? ""
    : `${keptBy === undefined ? "An earlier version" : `Version ${keptBy}`} kept this budget; this is ${packageJson.version}, which computed it anew. CHANGELOG.md says which results moved, and which were wrong.`;
