import { tokenize } from "@borgar/fx";
import { plain } from "../../core/naming/findNamed";
import { lossFamilies } from "../../reference/lossFamilies";
import type { Calculated } from "../../sheets/calculated";
import { itemAt } from "../../reference/itemAt";

const LONGEST_LIST = 400; // characters of a list that the plain formulas read

const firstWords = new Set(
  lossFamilies.flatMap(({ key, aliases }) => [key, ...aliases].map((name) => itemAt(plain(name).split(" "), 0))),
);

/**
 * Every text of a book that may be an entry of a list of fittings, without its count, as plain names are spelt. What is none
 * falls away when the tables are made.
 */
export function usedEntries({ workbook, shown }: Calculated): readonly string[] {
  const entries = new Set<string>();
  const add = (text: unknown): void => {
    if (typeof text === "string" && text.length <= LONGEST_LIST)
      for (const entry of entriesIn(text)) entries.add(entry);
  };
  for (const cells of shown.values()) for (const { value } of cells.values()) add(value);
  for (const { cells } of workbook.sheets) {
    for (const cell of cells) {
      if ("value" in cell) add(cell.value);
      else for (const token of tokenize(cell.formula)) if (token.type === "string") add(token.value.slice(1, -1));
    }
  }
  return [...entries];
}

/** The entries of one text whose first word begins a fitting's name. */
const entriesIn = (text: string): readonly string[] =>
  text
    .split(/[;\n]/)
    .map((entry) => plain(entry.replaceAll("°", "").replaceAll(",", ".")).replace(/\s*[x×]\s?\d+$/, ""))
    .filter((entry) => firstWords.has(itemAt(entry.split(" "), 0)));
