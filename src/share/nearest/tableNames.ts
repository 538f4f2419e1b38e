import type { Named } from "../../core/naming/findNamed";
import { quotedText } from "../references";
import { namesOf } from "./names";
import type { Candidate, Word } from "./spelling";

/** The names of a table that never changes, and their words, each once. */
export function tableNames<Row extends Named>(
  rows: readonly Row[],
  unless: (row: Row) => string | null = () => null,
): { readonly candidates: readonly Candidate[]; readonly words: readonly Word[] } {
  const names = rows.flatMap((row) => namesOf([row]).map((name) => ({ ...name, unless: unless(row) })));
  const words = [...new Set(names.flatMap((name) => name.words))];
  return {
    candidates: names.map((one) => ({
      name: quotedText(one.name),
      offered: quotedText(one.key),
      words: one.words.map((word) => words.indexOf(word)),
      unless: one.unless,
      isPartly: null,
    })),
    words: words.map((word) => () => quotedText(word)),
  };
}
