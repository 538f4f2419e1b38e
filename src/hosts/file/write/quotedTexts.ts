/**
 * Cells whose text could be taken for a formula once somebody edits them: the format marks those with quotePrefix, so that
 * Enter leaves a text a text. hucre knows no such mark, so the styles of these cells are doubled with it.
 */

const LOOKS_TYPED = /^[=+\-@']/;

export interface QuotedStyles {
  readonly styles: string; // the finished styles part
  readonly quoted: ReadonlyMap<number, number>; // style -> the same style with the mark
}

/** Whether this text is one that a spreadsheet would read as a formula if it were typed. */
export const looksTyped = (text: string): boolean => LOOKS_TYPED.test(text);

/** Doubles the styles of these numbers. */
export function quotedStyles(styles: string, wanted: ReadonlySet<number>): QuotedStyles {
  const quoted = new Map<number, number>();
  const finished = styles.replace(/<cellXfs count="\d+">(.*?)<\/cellXfs>/s, (_, list: string) => {
    const all = list.match(/<xf [^>]*?(?:\/>|>.*?<\/xf>)/gs) ?? [];
    const added = [...wanted].map((number, index) => {
      quoted.set(number, all.length + index);
      return all[number]!.replace("<xf ", '<xf quotePrefix="1" ');
    });
    return `<cellXfs count="${all.length + added.length}">${list}${added.join("")}</cellXfs>`;
  });
  return { styles: finished, quoted };
}

/** Calls back for the opening tag of every cell that keeps a text, with its style and the text's number. */
export function mapTextCells(sheet: string, change: (style: number, text: number) => number): string {
  return sheet.replace(
    /<c r="([A-Z]+\d+)" t="s"(?: s="(\d+)")?><v>(\d+)<\/v>/g,
    (whole, at: string, style: string | undefined, text: string) => {
      const before = Number(style ?? 0);
      const after = change(before, Number(text));
      return after === before ? whole : `<c r="${at}" t="s" s="${after}"><v>${text}</v>`;
    },
  );
}
