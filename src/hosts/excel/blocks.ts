/** A rectangle of cells that share something; columns and rows count from 1. */
export interface Block {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
  readonly key: string;
}

export interface Keyed {
  readonly column: number;
  readonly row: number;
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
    if (stretch.row !== lastRow) {
      const left = [...growing.values()].filter(({ row, rows }) => row + rows < stretch.row);
      for (const block of left) growing.delete(placeOfBlock(block));
      done.push(...left);
      lastRow = stretch.row;
    }
    const place = placeOfBlock(stretch);
    const above = growing.get(place);
    growing.set(place, above === undefined ? stretch : { ...above, rows: above.rows + 1 });
  }
  return [...done, ...growing.values()];
}

const placeOfBlock = ({ column, columns, key }: Block): string => `${column} ${columns} ${key}`;

/** Stretches of neighbours in a row, from the top. */
function stretchesOf(cells: readonly Keyed[]): Block[] {
  const sorted = [...cells].sort((a, b) => a.row - b.row || a.column - b.column);
  const stretches: Block[] = [];
  for (const { column, row, key } of sorted) {
    const last = stretches.at(-1);
    const continues = last?.row === row && last.column + last.columns === column && last.key === key;
    if (continues) stretches[stretches.length - 1] = { ...last, columns: last.columns + 1 };
    else stretches.push({ column, row, columns: 1, rows: 1, key });
  }
  return stretches;
}
