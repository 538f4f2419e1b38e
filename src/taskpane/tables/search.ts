import type { ReferenceTable } from "../../reference";
import type { UnitSystem } from "../../reference/quantities";
import { type Amount, amountsOf, printedIn } from "./amounts";
import { isRepealed } from "./repealed";
import type { Row } from "./values";
import { finder, fold, numbersMeant, wordsOf } from "./words";

/** A row as it is looked through: where it stands, and its texts and numbers ready for comparing. */
export interface Entry {
  readonly id: string;
  readonly table: ReferenceTable;
  readonly row: Row;
  readonly name: string; // key and label, folded
  readonly text: string; // every text of the row, with the names of its table, columns and units, folded
  readonly amounts: readonly Amount[];
  readonly printedIn: UnitSystem | null; // null where both systems, or none, may be
  readonly repealed: boolean;
}

const PROVENANCE = 4; // the last columns: basis, weak, source, where

/** Every row of every table, ready for searching. */
export function entriesOf(tables: readonly ReferenceTable[]): Entry[] {
  return tables.flatMap((table) => {
    const columns = table.columns.slice(0, -PROVENANCE).map(({ name }) => name);
    const about = [table.name, table.title, ...columns].join("\n");
    return table.rows.map((row, i) => {
      const texts = row.filter((cell) => typeof cell === "string");
      const amounts = amountsOf(table, row);
      return {
        id: `${table.name} ${i}`,
        table,
        row,
        name: fold(row.slice(0, 2).join("\n")),
        text: fold([...texts, about, ...amounts.map(({ unit }) => unit)].join("\n")),
        amounts,
        printedIn: printedIn(table, row),
        repealed: isRepealed(table, row),
      };
    });
  });
}

/** One thing that a row must have, and how: 0 not at all, 1 nearly, as a number that is shown with more digits, 2 as it was typed. */
type Wanted = (entry: Entry) => 0 | 1 | 2;

/**
 * The rows that have every word of the search, in words or as a number; a number with a unit behind it is one amount.
 *
 * What is called so comes first, and what is repealed last; among equals, what is printed in these units comes first.
 */
export function find(entries: readonly Entry[], search: string, system: UnitSystem): Entry[] {
  const words = wordsOf(search);
  if (words.length === 0) return [...entries];
  const units = new Set(
    words.filter((word) => entries.some(({ amounts }) => amounts.some(({ unit }) => unit === word))),
  );
  const isAmount = (at: number): boolean =>
    numbersMeant(words[at] ?? "").length > 0 && words[at + 1] !== undefined && units.has(words[at + 1]!);
  const wanted = words.flatMap((word, at): Wanted[] => {
    if (isAmount(at)) return [amountWanted(word, words[at + 1]!)];
    return isAmount(at - 1) ? [] : [wordWanted(word)];
  });
  const called = calledBy(
    words,
    words.filter((word) => !units.has(word) && numbersMeant(word).length === 0),
  );
  const plainNumbers = words
    .filter((word, at) => numbersMeant(word).length > 0 && !isAmount(at))
    .map((word) => finder(word));
  const found = entries.flatMap((entry) => {
    let nearly = false;
    for (const one of wanted) {
      const has = one(entry);
      if (has === 0) return [];
      nearly ||= has === 1;
    }
    const unnumbered = !plainNumbers.every((isIn) => isIn(entry.name)); // elbow 4-piece 1.5 has its number in the name
    const rank = [entry.repealed, called(entry), unnumbered, nearly, isForeign(entry, system)].map(Number);
    return [{ entry, rank }];
  });
  return found.sort((one, other) => compared(one.rank, other.rank)).map(({ entry }) => entry);
}

const wordWanted = (word: string): Wanted => {
  const [isIn, meant] = [finder(word), numbersMeant(word)];
  return ({ text, amounts }) => {
    if (isIn(text)) return 2;
    return best(amounts, meant);
  };
};

const amountWanted = (number: string, unit: string): Wanted => {
  const [isIn, meant] = [finder(`${number} ${unit}`), numbersMeant(number)];
  return ({ text, amounts }) => {
    if (isIn(text)) return 2;
    return best(
      amounts.filter((amount) => amount.unit === unit),
      meant,
    );
  };
};

function best(amounts: readonly Amount[], meant: readonly number[]): 0 | 1 | 2 {
  if (meant.length === 0) return 0;
  if (amounts.some(({ numbers }) => meant.some((number) => numbers.includes(number)))) return 2;
  return amounts.some(({ numbers }) => meant.some((number) => isNearly(numbers[0], number))) ? 1 : 0;
}

const NEARLY = 0.0025;

/** 482 is what one remembers of 482.6, and 5 is not what one remembers of 4.76. */
const isNearly = (shown: number, typed: number): boolean => Math.abs(shown - typed) <= NEARLY * Math.abs(shown);

/**
 * How an entry is called: 0 just as it was typed, 1 where its name begins so, 2 where it has the words so, 3 where it has each,
 * 4 where it has not. Units and numbers beside them are no part of a name.
 */
function calledBy(words: readonly string[], nameWords: readonly string[]): (entry: Entry) => number {
  const [whole, phrase] = [words.join(" "), nameWords.join(" ")];
  const each = (phrase === "" ? words : nameWords).map(finder);
  return ({ name }) => {
    const lines = name.split("\n");
    if (lines.includes(whole)) return 0;
    if (phrase !== "" && lines.some((line) => line.startsWith(phrase))) return 1;
    if (phrase !== "" && name.includes(phrase)) return 2;
    return each.every((isIn) => isIn(name)) ? 3 : 4;
  };
}

const isForeign = ({ printedIn }: Entry, system: UnitSystem): boolean => printedIn !== null && printedIn !== system;

const compared = (one: readonly number[], other: readonly number[]): number =>
  one.map((rank, index) => rank - other[index]!).find((difference) => difference !== 0) ?? 0;
