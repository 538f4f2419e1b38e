/** What people write between two fittings where the list has a semicolon; a number behind it may belong to the fitting before. */
const OTHER_SIGN = /\s*(?:[,+&/]|\band\b|\bplus\b)\s*(?=[a-z])/;
const NUMBER_FIRST = /^\d+(?:[.,]\d+)?(?:°| ?deg(?:rees)?\b)? .*[a-z]/;

/**
 * What was probably meant by an entry of a list of fittings that cannot be read.
 *
 * @param entry in small letters
 * @param isEntry whether a text is one that can be
 * @returns what the list must be, as a sentence goes on with it; null where nobody can tell
 * @source house grammar
 */
export function likelySlip(entry: string, isEntry: (text: string) => boolean): string | null {
  const parts = entry.split(OTHER_SIGN);
  if (parts.length > 1 && parts.some(isEntry)) return `parted by ";", as in "${parts.join("; ")}"`;
  if (NUMBER_FIRST.test(entry)) return `a fitting's name, then its numbers, then how many, as in "elbow 1.5 x2"`;
  return null;
}
