import { cellAddress } from "../../sheets/address";
import type { RangeRef } from "../../sheets/rangeRef";
import { quotedText } from "../references";
import type { Workings } from "../translate/workings";
import { likenessCells, type Line, partOf, UNSURE } from "./likeness";
import { LONGEST_NAME } from "./names";
import { inFull, wantedName, wordCells, WORDS } from "./wantedName";

/** A name that may be meant. */
export interface Candidate {
  readonly name: string; // as a formula, spelled as names are compared
  readonly offered: string; // as a formula
  readonly words: readonly number[]; // their places in the list of words
  readonly unless: string | null; // where this holds, it is not offered
  readonly isPartly: ((name: string, words: readonly string[]) => string) | null; // where more of it would have to be compared
}

/** A word of names, as a formula; of the cells of the names and words, where it is cut out of one. */
export type Word = (nameAt: (candidate: number) => string, wordAt: (word: number) => string) => string;

/** One text that is no name, and what it may mean. */
export interface Wanted {
  readonly key: string;
  readonly title: string;
  readonly typed: string; // the text, or an empty one where nothing is wrong
  readonly isList: boolean; // numbers in it are none of the name, and what follows a name is not compared
  readonly candidates: readonly Candidate[];
  readonly words: readonly Word[];
}

const NOT_OFFERED = 99;
const TAKEN = -NOT_OFFERED - UNSURE;
const HEAD = WORDS + 2; // lines above the names: the title, the words and the headings

const LINE = [
  ...["name", "offered as", "same first signs", "same last signs"],
  ...["left of the longer", "of the shorter", "distance", "score"],
];
const PARTS = ["signs", "first so many", "last so many"]; // of the wanted name, beside the lines
const COLUMNS = [...LINE, ...PARTS];
const SCORE = LINE.length - 1;

/** The cell that has the text, and the one that says which name is nearest to it in the words of a sentence, or nothing. */
export function spelling(wanted: Wanted, workings: Workings): { readonly typed: string; readonly hint: string } {
  const lines = HEAD + wanted.candidates.length + wanted.words.length;
  const { top, left } = workings.once(wanted.key, () =>
    workings.place(Math.max(lines, LONGEST_NAME), COLUMNS.length, (place) => spellingCells(place, wanted)),
  );
  return { typed: fixedCell(left + 1, top), hint: fixedCell(left + 5, top) };
}

const fixedCell = (column: number, row: number): string =>
  cellAddress(column, row).replace(/([A-Z]+)(\d+)/, "$$$1$$$2");

/** The score of a name is its distance, or that of one of its words and 1; each word that both have is worth two. */
function spellingCells({ top, left }: RangeRef, wanted: Wanted): string[][] {
  const { title, typed, isList, candidates, words } = wanted;
  const head = (column: number, row = 0): string => fixedCell(left + column, top + row);
  const [text, full, name, best] = [head(1), head(2), head(3), head(4)];
  const lineAt = (index: number): Line => {
    const at = (column: number): string => cellAddress(left + column, top + HEAD + index);
    return { name: at(0), begins: at(2), ends: at(3), longer: at(4), shorter: at(5), distance: at(6) };
  };
  const wordAt = (word: number): Line => lineAt(candidates.length + word);
  const part = (column: number): string =>
    `${head(LINE.length + column)}:${head(LINE.length + column, LONGEST_NAME - 1)}`;
  const likeness = (line: Line): readonly string[] =>
    likenessCells(line, { name, signs: part(0), first: part(1), last: part(2) });
  const wordRows = Array.from({ length: WORDS }, (_, index) => 1 + index);
  const score = ({ unless, isPartly, words: own }: Candidate, line: Line): string => {
    const shared = wordRows.map((row) => `ISNUMBER(FIND(${head(3, row)}," "&${line.name}&" "))`).join("+");
    const ofWords = own.length === 0 ? "" : `,1+MIN(${own.map((word) => wordAt(word).distance).join(",")})`;
    const names = own.map((word) => wordAt(word).name);
    const unsure = isPartly === null ? "" : `,IF(${isPartly(line.name, names)},${UNSURE},${NOT_OFFERED})`;
    const alike = `MIN(${line.distance}${ofWords}${unsure})-2*(${shared})`;
    const begun = `IF(LEFT(${line.name},LEN(${name}))=${name},0,${alike})`;
    const isTaken = `LEFT(${full}&" ",LEN(${line.name})+1)=${line.name}&" "`; // then what follows it is wrong
    const told = isList ? `IF(${isTaken},${TAKEN},${begun})` : begun;
    const none = [`${name}=""`, `${line.name}=""`, ...(unless === null ? [] : [unless])];
    return `IF(OR(${none.join(",")}),${NOT_OFFERED},${told})`;
  };
  const ofAll = (column: number): string => `${head(column, HEAD)}:${head(column, HEAD + candidates.length - 1)}`;
  const nearest = `INDEX(${ofAll(1)},MATCH(${best},${ofAll(SCORE)},0))`;
  const isSure = `AND(${best}<${NOT_OFFERED},${best}=INT(${best}))`;
  const first = [
    quotedText(title),
    typed,
    inFull(text, isList),
    wantedName(
      full,
      isList,
      wordRows.map((row) => head(2, row)),
      head(0, WORDS),
    ),
    `MIN(${ofAll(SCORE)})`,
    `IF(${name}="","",IF(${isSure},${quotedText(' (nearest: "')}&${nearest}&${quotedText('")')},""))`,
  ];
  const lines: (readonly string[])[] = [
    first,
    ...wordRows.map((row) =>
      wordCells(row === 1 ? `${full}&" "` : head(0, row - 1), head(1, row), head(2, row), isList),
    ),
    LINE.map(quotedText),
    ...candidates.map((one, index) => {
      const line = lineAt(index);
      return [one.name, one.offered, ...likeness(line), score(one, line)];
    }),
    ...words.map((word, index) => {
      const text = word(
        (candidate) => lineAt(candidate).name,
        (other) => wordAt(other).name,
      );
      return [text, "", ...likeness(wordAt(index))];
    }),
  ];
  return Array.from({ length: Math.max(lines.length, LONGEST_NAME) }, (_, row) => {
    const cells = lines[row] ?? [];
    const signs = cellAddress(left + LINE.length, top + row);
    const parts = [String(row + 1), partOf("LEFT", name, signs), partOf("RIGHT", name, signs)];
    const blank = new Array<string>(LINE.length - cells.length).fill("");
    return [...cells, ...blank, ...(row < LONGEST_NAME ? parts : PARTS.map(() => ""))];
  });
}
