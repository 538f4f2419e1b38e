/**
 * The common form of a text for comparing: no accents, one case, "ft²" as "ft2", and -ize written -ise, so that either
 * spelling finds the other. Lower case twice: taking signs apart can bring capitals ("№" holds "N").
 */
export const fold = (text: string): string =>
  text.toLowerCase().normalize("NFKD").toLowerCase().replace(/\p{M}/gu, "").replace(/iz/g, "is");

/** The words of a search; punctuation around a word is no part of it. */
export const wordsOf = (search: string): string[] =>
  fold(search)
    .split(/\s+/)
    .map((word) => word.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, ""))
    .filter((word) => word !== "");

const SIGNS = /[.*+?^${}()|[\]\\/]/g; // that mean something in a regular expression
const PLURAL = /^.{3,}[^siu]s$/;
const NUMBER = /^\d+(?:[.,]\d+)?$/;

/** The numbers that a word can mean: "0,27" is 0.27; "1,500" is 1500 or 1.5; none if it is no number. */
export function numbersMeant(word: string): number[] {
  if (!NUMBER.test(word)) return [];
  const decimal = Number(word.replace(",", "."));
  return /^[1-9]\d{0,2},\d{3}$/.test(word) ? [decimal, Number(word.replace(",", ""))] : [decimal];
}

/**
 * Tells of a folded text whether it has the word: a number only whole (no "5" in "1.5" or "15"), also with its unit behind it,
 * other words anywhere, one in the plural also in the singular.
 */
export function finder(word: string): (text: string) => boolean {
  if (!NUMBER.test(word.split(" ")[0]!)) {
    const one = PLURAL.test(word) ? word.slice(0, -1) : word;
    return (text) => text.includes(one);
  }
  const whole = new RegExp(String.raw`(?:^|[^\d.,]|(?:^|\D)[.,])${word.replace(SIGNS, "\\$&")}(?!\d)(?![.,]\d)`);
  return (text) => whole.test(text);
}
