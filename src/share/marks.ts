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

const NOTE = "Fixed in this copy: ";

/** A cell with a sentence on why it stays as it is, behind whatever its note says. */
export const withFixedNote = <Cell extends Pick<SheetCell, "note">>(cell: Cell, sentence: string): Cell => ({
  ...cell,
  note: cell.note === undefined ? NOTE + sentence : `${cell.note}\n${NOTE}${sentence}`,
});

/** The note as it was before; undefined where there was none. */
export function noteBefore(note: string | undefined): string | undefined {
  const cut = note?.indexOf(NOTE) ?? -1;
  if (note === undefined || cut < 0) return note;
  const before = note.slice(0, cut).replace(/\n$/, "");
  return before === "" ? undefined : before;
}
