import { type Look, lookOf, type StyleName } from "../sheets/styles";
import type { SheetCell } from "../sheets/workbook";

/** How fixed numbers look: slanted, and on a tint where the cell has none of its own. */
const TINT = "#ece9f3";

export function markFixed(style: StyleName | Look | undefined): Look {
  const look = lookOf(style ?? "result");
  return { ...look, italic: true, fill: look.fill ?? TINT };
}

/** The look without that mark. */
export function unmarked(style: StyleName | Look | undefined): StyleName | Look | undefined {
  if (style === undefined || typeof style === "string") return style;
  return Object.fromEntries(
    Object.entries(style).filter(([part, value]) => part !== "italic" && !(part === "fill" && isTint(value))),
  ) as unknown as Look;
}

const isTint = (fill: unknown): boolean => typeof fill === "string" && fill.toLowerCase() === TINT;

const FIXED = "Fixed in this copy: ";
const REFUSED = "Refused when this copy was made: ";

type Noted = Pick<SheetCell, "note">;

/** A cell with a sentence on why it stays as it is, behind whatever its note says. */
export const withFixedNote = <Cell extends Noted>(cell: Cell, sentence: string): Cell => noted(cell, FIXED + sentence);

/** A cell with what the add-in said of its error, which a plain formula cannot say; as it is where nothing was said. */
export const withRefusal = <Cell extends Noted>(cell: Cell, sentence: string): Cell =>
  sentence === "" ? cell : noted(cell, REFUSED + sentence);

const noted = <Cell extends Noted>(cell: Cell, words: string): Cell => ({
  ...cell,
  note: cell.note === undefined ? words : `${cell.note}\n${words}`,
});

/** The note as it was before; undefined where there was none. */
export function noteBefore(note: string | undefined): string | undefined {
  const cut = note?.search(OURS) ?? -1;
  if (note === undefined || cut < 0) return note;
  const before = note.slice(0, cut).replace(/\n$/, "");
  return before === "" ? undefined : before;
}

const OURS = new RegExp(`${FIXED}|${REFUSED}`);
