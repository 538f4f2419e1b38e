/** Parts of a number format that are no codes: texts in quotes, what stands in brackets, signs that are shown as they are. */
export const NO_CODES = /"[^"]*"|\[[^\]]*\]|\\.|_.|\*./g;

const known = new Map<string, boolean>(); // a book has few formats on many cells

/** Whether a number format shows a day or a time. Elapsed hours, as [h]:mm, are a time, too. */
export function showsDay(format: string): boolean {
  let shows = known.get(format);
  if (shows === undefined) {
    const codes = format.replace(NO_CODES, "");
    shows = /\[(h+|m+|s+)\]/i.test(format) || (!/general/i.test(format) && /[dmyhs]/i.test(codes));
    known.set(format, shows);
  }
  return shows;
}
