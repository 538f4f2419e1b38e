/** A text without its digits. */
export const withoutDigits = (text: string): string =>
  [..."0123456789"].reduce((inner, digit) => `SUBSTITUTE(${inner},"${digit}","")`, text);

/**
 * A text of digits with at most one point as a number, the same in every locale: VALUE alone would read "1.2" or "1/2" as a date,
 * "1,500" as a thousand and "5%" as a share. It is asked only for digits. The point is taken out before and the number divided
 * after, so that the nearest number to the text comes out, as where it is typed.
 *
 * @param otherwise what stands for any other text
 */
export function digitsOf(text: string, otherwise: string): string {
  const isOther = `OR(${text}="",${text}=".",ISERROR(FIND("|"&${withoutDigits(text)}&"|","||.|")))`;
  return `IF(${isOther},${otherwise},VALUE(SUBSTITUTE(${text},".",""))/10^MAX(0,LEN(${text})-FIND(".",${text}&".")))`;
}

/** The same, but for a text that may be two numbers, as the functions refuse it: "1.200" is 1200 to a writer who parts thousands by a point. */
export function plainDigitsOf(text: string, otherwise: string): string {
  const point = `FIND(".",${text}&".")`;
  const isDoubtful = `AND(LEN(${text})-${point}=3,${point}>1,${point}<5,LEFT(${text},1)<>"0")`;
  return `IF(${isDoubtful},${otherwise},${digitsOf(text, otherwise)})`;
}
