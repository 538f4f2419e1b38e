import { STAYS_TEXT, TEXT } from "../../sheets/textCells";

/**
 * A text as it must be written so that Excel keeps it a text. Excel reads what is written as if it were typed: a sign
 * at the start makes a formula, digits a number or a date, TRUE a truth value. An apostrophe before it stops that; it
 * is not part of the value. Words without a digit need none, and then show none in the formula bar. A cell for text alone keeps what
 * is typed anyway, the apostrophe too.
 *
 * @param format of the cell, where it has one already
 */
export const asLiteral = (text: string, format?: string): string =>
  text === "" || isPlainWords(text) || (format === TEXT && STAYS_TEXT.test(text)) ? text : `'${text}`;

const isPlainWords = (text: string): boolean => /^\p{L}\D*$/u.test(text) && !/^(true|false)\s*$/i.test(text);
