import { clubCopy } from "../share/clubCopy";
import type { ClubCopy, CopyOrder } from "../share/copy";
import { type Compute, type Recomputed, recomputed } from "../share/recomputed";
import type { Calculated } from "../sheets/calculated";
import { differsWords } from "./copyOutcome";
import { FileRefusal } from "./file/fileRefusal";
import { writeBook } from "./file/writeBook";

/** A copy as a file, and what became of its cells; or why there is none. */
export type MadeCopy =
  | (Pick<ClubCopy, "live" | "fixed" | "untranslated"> &
      Pick<Recomputed, "unchecked"> & { readonly made: true; readonly bytes: Uint8Array })
  | { readonly made: false; readonly why: string };

/**
 * Makes a copy for people without the functions. A copy of plain formulas is computed and compared with its book; one that shows
 * anything else is not made.
 *
 * @param step is told when a step begins
 */
export async function makeCopy(
  book: Calculated,
  order: CopyOrder,
  compute: Compute,
  step: (index: number) => void,
): Promise<MadeCopy> {
  step(0);
  const translated = clubCopy(book, order);
  step(1);
  const { copy, differs, unchecked } =
    order.kind === "values" ? { copy: translated, differs: [], unchecked: [] } : recomputed(book, translated, compute);
  if (differs.length > 0) return { made: false, why: differsWords(differs, book) };
  step(2);
  const { live, fixed, untranslated } = copy;
  try {
    const title = copy.book.workbook.name;
    const bytes = await writeBook(copy.book, { title, recalculate: order.kind === "formulas" });
    return { made: true, bytes, live, fixed, untranslated, unchecked };
  } catch (error) {
    if (error instanceof FileRefusal) return { made: false, why: error.message };
    throw error;
  }
}
