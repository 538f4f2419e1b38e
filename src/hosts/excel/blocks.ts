import type { Place } from "../../sheets/address";
import type { Rectangle } from "../../sheets/rectangle";

/** A rectangle of cells that share something. */
export interface Block extends Rectangle {
  readonly key: string;
}

export interface Keyed extends Place {
  readonly key: string;
}

/**
 * Rectangles over cells of one key, so that a sheet is written in few strokes: neighbours in a row are joined first,
 * then equal stretches under one another. Every cell lies in one block and no block holds a cell that is not listed.
 */
export function blocksOf(cells: readonly Keyed[]): Block[] {
  const done: Block[] = [];
  const growing = new Map<string, Block>();
  let lastRow = 0;
  for (const stretch of stretchesOf(cells)) {
    if (stretch.top !== lastRow) {
      const left = [...growing.values()].filter(({ bottom }) => bottom < stretch.top - 1);
      for (const block of left) growing.delete(placeOfBlock(block));
      done.push(...left);
      lastRow = stretch.top;
    }
    const place = placeOfBlock(stretch);
    const above = growing.get(place);
    growing.set(place, above === undefined ? stretch : { ...above, bottom: stretch.top });
  }
  return [...done, ...growing.values()];
}

const placeOfBlock = ({ left, right, key }: Block): string => `${left} ${right} ${key}`;

/**
 * Stretches of neighbours in a row, from the top. What is written over cells of a user's sheet goes by these: where a filter hides rows,
 * Excel has been seen to write the first row of a block into every row that is shown (office-js issue 224).
 */
export function stretchesOf(cells: readonly Keyed[]): Block[] {
  const sorted = [...cells].sort((a, b) => a.row - b.row || a.column - b.column);
  const stretches: Block[] = [];
  for (const { column, row, key } of sorted) {
    const last = stretches.at(-1);
    const continues = last?.top === row && last.right === column - 1 && last.key === key;
    if (continues) stretches[stretches.length - 1] = { ...last, right: column };
    else stretches.push({ top: row, left: column, bottom: row, right: column, key });
  }
  return stretches;
}
