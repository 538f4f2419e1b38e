import { tokenize } from "@borgar/fx";
import { plain } from "../../core/naming/findNamed";
import { lossFamilies } from "../../reference/lossFamilies";
import type { Calculated } from "../../sheets/calculated";
import { itemAt } from "../../reference/itemAt";

const LONGEST_LIST = 400; // characters of a list that the plain formulas read

const firstWords = new Set(
  lossFamilies.flatMap(({ key, aliases }) => [key, ...aliases].map((name) => itemAt(plain(name).split(" "), 0))),
);

/** What lists of fittings a book has. */
export interface UsedEntries {
  readonly entries: readonly string[]; // each without its count
  readonly longest: number; // entries of the longest list
}

/**
 * Every text of a book that may be an entry of a list of fittings, without its count, as plain names are spelt. What is none
 * falls away when the tables are made.
 */
export function usedEntries({ workbook, shown }: Calculated): UsedEntries {
  const entries = new Set<string>();
  let longest = 0;
  const add = (text: unknown): void => {
    if (typeof text !== "string" || text.length > LONGEST_LIST) return;
    const found = entriesIn(text);
    if (found.length > 0) longest = Math.max(longest, text.split(/[;\n]/).length);
    for (const entry of found) entries.add(entry);
  };
  for (const cells of shown.values()) for (const { value } of cells.values()) add(value);
  for (const { cells } of workbook.sheets) {
    for (const cell of cells) {
      if ("value" in cell) add(cell.value);
      else for (const token of tokenize(cell.formula)) if (token.type === "string") add(token.value.slice(1, -1));
    }
  }
  return { entries: [...entries], longest };
}

/** The entries of one text whose first word begins a fitting's name. */
const entriesIn = (text: string): readonly string[] =>
  text
    .split(/[;\n]/)
    .map((entry) => plain(entry.replaceAll("°", "").replaceAll(",", ".")).replace(/\s*[x×]\s?\d+$/, ""))
    .filter((entry) => firstWords.has(itemAt(entry.split(" "), 0)));
