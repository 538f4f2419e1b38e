import { distance } from "fastest-levenshtein";

const LONG = 6; // letters; in a shorter word one letter makes another word

/**
 * Whether a word is another with a slip in it: one letter more, less or other in a long one, two changed about, or its plural.
 *
 * @param typed what does not end in letters is left out of its end
 * @param wanted the word that may be meant
 * @returns true for the word itself, too
 * @source house
 */
export function isMisspelt(typed: string, wanted: string): boolean {
  const word = typed.replace(/[^\p{L}]+$/u, "");
  if (word === wanted || word === `${wanted}s`) return true;
  const far = distance(word, wanted);
  return (far === 1 && wanted.length >= LONG) || (far === 2 && sortedLetters(word) === sortedLetters(wanted));
}

const sortedLetters = (text: string): string => [...text].sort().join("");
