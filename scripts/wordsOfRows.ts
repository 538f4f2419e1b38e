import { rowsWithWords, type Words } from "../src/reference/rowsWithWords";

/** What the build takes out of the rows that functions.js computes by (scripts/withoutProperties.js). */
export const WORDS = [
  "label",
  "note",
  "source",
  "locator",
  "basis",
  "checked",
] as const satisfies readonly (keyof Words)[];

/** The same, as src/functions/tables/tellWords.ts gives it back: what rows say, each once, and its place there for each row. */
export function wordsOfRows(): { readonly words: readonly Words[]; readonly places: readonly number[] } {
  const all = rowsWithWords().map((row) =>
    JSON.stringify(Object.fromEntries(WORDS.filter((word) => word in row).map((word) => [word, row[word]]))),
  );
  const words = [...new Set(all)];
  return { words: words.map((one) => JSON.parse(one) as Words), places: all.map((one) => words.indexOf(one)) };
}
