/** The program with other lists of columns and notes than it ships: as if somebody had changed them, and nothing else. */
import * as library from "@odoo/o-spreadsheet";
import type * as answerColumnsModule from "../../src/reference/answerColumns";
import type * as noteWordsModule from "../../src/reference/noteWords";
import type * as runColumnsModule from "../../src/reference/runColumns";
import { lots } from "./lots";

type RunColumns = typeof runColumnsModule.runColumns;
type AnswerLists = typeof answerColumnsModule;
type NoteWords = typeof noteWordsModule.noteWords;

/** What is changed of each list; a list that is left out stays as it is. */
export interface Changed {
  readonly runColumns?: (list: RunColumns) => readonly { readonly name: string }[];
  readonly answers?: (lists: AnswerLists) => AnswerLists;
  readonly notes?: (list: NoteWords) => Readonly<Record<string, { readonly mark?: string; readonly words: string }>>;
}

const FILES = {
  runColumns: "../../src/reference/runColumns",
  answers: "../../src/reference/answerColumns",
  notes: "../../src/reference/noteWords",
} as const;

const GRID = "@odoo/o-spreadsheet";

/** The grid's library, which knows nothing of our lists and takes longest to load: our functions take the places of those before. */
const sameGrid = () => ({
  ...library,
  addFunction: (...named: Parameters<typeof library.addFunction>) =>
    library.registries.functionRegistry.replace(...named),
});

/** Loads everything of ours anew with these lists; what `use` imports, it gets with them. */
export async function withLists<Result>(changed: Changed, use: () => Promise<Result>): Promise<Result> {
  let result: Result | undefined;
  await jest.isolateModulesAsync(async () => {
    jest.doMock(GRID, sameGrid);
    const { runColumns, answers, notes } = changed;
    if (runColumns !== undefined)
      jest.doMock(FILES.runColumns, () => {
        const list: { runColumns: RunColumns } = jest.requireActual(FILES.runColumns);
        return { ...list, runColumns: runColumns(list.runColumns) };
      });
    if (answers !== undefined) jest.doMock(FILES.answers, () => answers(jest.requireActual(FILES.answers)));
    if (notes !== undefined)
      jest.doMock(FILES.notes, () => {
        const list: { noteWords: NoteWords } = jest.requireActual(FILES.notes);
        return { ...list, noteWords: notes(list.noteWords) };
      });
    result = await use();
  });
  [GRID, ...Object.values(FILES)].forEach((file) => jest.dontMock(file));
  return result!;
}

/** A list in an order drawn from a seed. */
export function shuffled<Item>(list: readonly Item[], seed: number): Item[] {
  const [lot, items] = [lots(seed), [...list]];
  for (let last = items.length - 1; last > 0; last--) {
    const other = Math.floor(lot() * (last + 1));
    [items[last], items[other]] = [items[other]!, items[last]!];
  }
  return items;
}

/** A column that nobody reads, as somebody would add one. */
const added = (name: string) => ({ name, kind: "words", quantity: null, shown: { width: 8, hint: "For trying out." } });

/** The list with a new column at its left end, one in its middle and one at its right. */
export const withNewColumns = <Row extends { readonly name: string }>(list: readonly Row[]) => [
  added("Painted"),
  ...list.slice(0, list.length / 2),
  added("Bought in"),
  ...list.slice(list.length / 2),
  added("Seen by"),
];

/** Every answer's columns in an order drawn from a seed. */
export const reordered =
  (seed: number) =>
  (lists: AnswerLists): AnswerLists =>
    Object.fromEntries(Object.entries(lists).map(([name, list]) => [name, shuffled<unknown>(list, seed)])) as never;

/** Every note in other words, its values kept: each word of it is one that stands nowhere else. */
export function reworded(list: NoteWords): Record<string, { mark?: string; words: string }> {
  const other = (key: string, text: string): string =>
    text.replace(/\{\w+\}|[^{}]+/g, (piece, at: number) => (piece.startsWith("{") ? piece : ` qz${key}${at} `));
  return Object.fromEntries(
    Object.entries(list).map(([key, note]) => [
      key,
      { words: other(key, note.words), ...("mark" in note ? { mark: `qx${key}` } : {}) },
    ]),
  );
}
