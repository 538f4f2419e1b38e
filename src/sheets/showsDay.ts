/** Parts of a number format that are no codes: texts in quotes, what stands in brackets, signs that are shown as they are. */
const NO_CODES = /"[^"]*"|\[[^\]]*\]|\\.|_.|\*./g;

/** Whether a number format shows a day or a time. Elapsed hours, as [h]:mm, are a time, too. */
export const showsDay = (format: string): boolean =>
  /\[(h+|m+|s+)\]/i.test(format) || (!/general/i.test(format) && /[dmyhs]/i.test(format.replace(NO_CODES, "")));
