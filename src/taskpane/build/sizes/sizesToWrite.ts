import type { CellBlock } from "../../../hosts/host";
import { sizesColumns } from "../../../reference/answerColumns";
import { cellAddress } from "../../../sheets/address";
import { PIPES_ANSWER } from "../../../sheets/book/sizes/sizesLayout";
import type { Calculated } from "../../../sheets/calculated";
import { sizesAsked, type SizesAsked } from "./sizesAsked";
import { blocksOf } from "./sizesFound";

/**
 * What goes onto the sheet Sizes when a search has ended. It takes a while, and the sheet can be used meanwhile: where rows were moved, or
 * something stands below the last answer that no search left, nothing is written, and a sentence says why.
 *
 * @param book as it stands now
 * @param asked as it was when the search began
 */
export function sizesToWrite(
  book: Calculated,
  asked: SizesAsked,
  ...answer: [rows: Parameters<typeof blocksOf>[1], outcome: readonly string[], when: string]
): readonly CellBlock[] | { readonly why: string } {
  const now = sizesAsked(book);
  if ("why" in now) return now;
  const { sheet } = now;
  const at = strayIn(book, sheet);
  return at === null
    ? blocksOf({ ...asked, sheet }, ...answer)
    : { why: `${at} of the sheet ${sheet} holds something where the answer goes. Move it, then search again.` };
}

/** The first cell below the last answer, whose every row has a name in its first column, that is filled all the same. */
function strayIn({ workbook, shown }: Calculated, sheet: string): string | null {
  const formulas = new Set(
    workbook.sheets.find(({ name }) => name === sheet)?.cells.flatMap((cell) => ("formula" in cell ? [cell.at] : [])),
  );
  const isFilled = (at: string): boolean => formulas.has(at) || (shown.get(sheet)?.get(at)?.value ?? "") !== "";
  let isBelow = false;
  for (let row = PIPES_ANSWER.header + 1; row <= PIPES_ANSWER.last; row++) {
    isBelow ||= !isFilled(cellAddress(1, row));
    const filled = sizesColumns.map((_, place) => cellAddress(place + 1, row)).find(isFilled);
    if (isBelow && filled !== undefined) return filled;
  }
  return null;
}
