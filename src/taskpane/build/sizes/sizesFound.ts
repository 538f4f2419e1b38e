import { sizesColumns, type SizesKey } from "../../../reference/answerColumns";
import { placeOfColumn } from "../../../reference/columnsOfAnswers";
import type { CellBlock } from "../../../hosts/host";
import {
  OUTCOME,
  OUTCOME_ROWS,
  PIPES_ANSWER,
  SEARCHED_AT,
  WATCHED,
  WATCHED_FIRST,
} from "../../../sheets/book/sizes/sizesLayout";
import type { SizesAsked } from "./sizesAsked";

type Row = readonly (string | number | boolean)[];

/** A diameter that the search would change. */
export interface NewSize {
  readonly run: string;
  readonly now: number; // in the table's units
  readonly buy: number;
}

/** The answer of SIZES, read. */
export interface SizesFound {
  readonly outcome: readonly string[]; // in words, what matters first
  readonly changes: readonly NewSize[];
  readonly meets: boolean; // whether every need is met, with its margin
}

const at = (row: Row, key: SizesKey): string | number | boolean => row[placeOfColumn(sizesColumns, key)] ?? "";
const WHOLE = "all together";

/** Reads the answer of SIZES, headings included. */
export function sizesFound(rows: readonly Row[]): SizesFound {
  const end = rows.findIndex((row) => at(row, "run") === WHOLE);
  const [whole, ...after] = rows.slice(end) as [Row, ...Row[]];
  const status = sentences(String(at(whole, "need")));
  const now = after.find((row) => at(row, "run") === "as it is");
  const called = (...names: string[]): Row[] => after.filter((row) => names.includes(String(at(row, "run"))));
  const also = [...called("by itself", "clash").slice(0, 1), ...called("left open", "a stronger fan", "fan", "a port")];
  return {
    outcome: [...status, ...priceWords(whole, now), ...also.map((row) => sentence(String(at(row, "need"))))],
    changes: rows.slice(1, end).flatMap((row) => {
      const [now, buy] = [at(row, "now"), at(row, "buy")];
      return typeof now === "number" && typeof buy === "number" && now !== buy ? [{ run: String(at(row, "run")), now, buy }] : []; // prettier-ignore
    }),
    meets: /^(best of all|best found)/.test(String(at(whole, "need"))),
  };
}

function priceWords(whole: Row, now: Row | undefined): string[] {
  const [chosen, share] = [at(whole, "price"), at(whole, "share")];
  const [before, had] = now === undefined ? ["", ""] : [at(now, "price"), at(now, "share")];
  const price = `The pipe costs ${said(chosen)}${before === "" ? "" : `, as it is ${said(before)}`}: in your prices, or length times diameter.`;
  if (typeof share !== "number") return [price];
  const worst = `The worst served need gets ${share < 0 ? WRONG_WAY : `${said(share)} % of what it needs`}${typeof had === "number" ? `; as it is, ${had < 0 ? WRONG_WAY : `${said(had)} %`}` : ""}.`;
  return [worst, price];
}

const WRONG_WAY = "nothing, for its air runs the wrong way";

const said = (value: string | number | boolean): string =>
  typeof value === "number" ? String(Number(value.toPrecision(4))) : String(value);

/** Names of runs may stand between ; too, so only what a sentence of ours begins with parts them. */
const sentences = (words: string): string[] =>
  words.split(/; (?=impossible: |none found that |these sizes|the other needs|no choice gives )/).map(sentence);
const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** What is written on the sheet Sizes: the answer, its outcome in words, and what it rested on. */
export function blocksOf(
  { sheet, watched }: SizesAsked,
  rows: readonly Row[],
  outcome: readonly string[],
  when: string,
): CellBlock[] {
  const { header, last } = PIPES_ANSWER;
  const blankLine = sizesColumns.map(() => null);
  const filled = rows.slice(1).map((row) => row.map((cell) => (cell === "" ? null : cell)));
  return [
    {
      sheet,
      at: `A${header + 1}`,
      rows: Array.from({ length: last - header }, (_, index) => filled[index] ?? blankLine),
    },
    { sheet, at: `B${OUTCOME}`, rows: Array.from({ length: OUTCOME_ROWS }, (_, index) => [outcome[index] ?? null]) },
    { sheet, at: `${WATCHED.then}${WATCHED_FIRST}`, rows: watched.map((words) => [words === "" ? null : words]) },
    { sheet, at: SEARCHED_AT.replaceAll("$", ""), rows: [[when]] },
  ];
}

/** A day and a time of this machine, as every sheet may hold them: a text. */
export function timeWords(date: Date): string {
  const two = (number: number): string => String(number).padStart(2, "0");
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())} ${two(date.getHours())}:${two(date.getMinutes())}`;
}
