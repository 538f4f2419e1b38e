/**
 * A sheet's name before an address, as any program reads it: Runs!, Sheet2!, 'My runs'!, 'Q1'!. Quotes are never wrong, so
 * a name goes without them only where it is a plain word: three letters or more, since one or two may be a row or a column
 * (R, C, RC, in other languages Z or ZS), a number behind four at least, since ABC1 is a cell, and neither TRUE nor FALSE.
 */
export const sheetPrefix = (sheet: string): string =>
  PLAIN.test(sheet) && !/^(?:true|false)$/i.test(sheet) ? `${sheet}!` : `'${sheet.replaceAll("'", "''")}'!`;

const PLAIN = /^(?:[A-Za-z]{3}|[A-Za-z]{4,}[0-9]*)$/;
