/**
 * A text as it must be written so that Excel keeps it a text. Excel reads what is written as if it were typed: a sign
 * at the start makes a formula, digits a number or a date, TRUE a truth value. An apostrophe before it stops that; it
 * is not part of the value. Words without a digit need none, and then show none in the formula bar.
 */
export const asLiteral = (text: string): string => (text === "" || isPlainWords(text) ? text : `'${text}`);

const isPlainWords = (text: string): boolean => /^\p{L}\D*$/u.test(text) && !/^(true|false)\s*$/i.test(text);
