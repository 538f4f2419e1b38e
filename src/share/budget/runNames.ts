import { LONGEST_NAME } from "../nearest/names";
import type { Candidate, Word } from "../nearest/spelling";
import type { BudgetPlace } from "./blockNames";

const WORDS = 3; // of a run's name that are compared by themselves

/**
 * The runs that one may have been meant to join: named, before the fan, and no open ends, which have a hood or an airflow of their
 * own; without the run that asks.
 */
export function runNames({ rows, cell, scalar }: BudgetPlace): {
  readonly candidates: readonly Candidate[];
  readonly words: readonly Word[];
} {
  const all = Array.from({ length: rows }, (_, index) => index);
  return {
    candidates: all.map((index): Candidate => {
      const row = index + 1;
      const isOpenEnd = `AND(${cell("openEnd", row)}=1,${cell("fault", row)}="")`;
      const isNone = `OR(ISERROR(${cell("name", row)}),${cell("side", row)}=2,${isOpenEnd})`;
      return {
        name: `IF(${isNone},"",MID(${cell("key", row)},3,999))`,
        offered: `IF(ISERROR(${cell("name", row)}),"",${cell("name", row)})`,
        words: Array.from({ length: WORDS }, (_, word) => index * WORDS + word),
        unless: `${cell("used", row)}=${scalar("wrongTo")}`,
        isPartly: (name, words) => `OR(LEN(${name})>${LONGEST_NAME},ISNUMBER(FIND(" ",${words.at(-1)!})))`,
      };
    }),
    words: all.flatMap((index): Word[] => {
      const [first, second] = [index * WORDS, index * WORDS + 1];
      const behind = (name: string, word: string): string => `MID(${name},LEN(${word})+2,999)`;
      return [
        (nameAt) => firstOf(nameAt(index)),
        (nameAt, wordAt) => {
          const rest = behind(nameAt(index), wordAt(first));
          return `IF(${wordAt(first)}="","",LEFT(${rest},FIND(" ",${rest}&" ")-1))`;
        },
        (nameAt, wordAt) =>
          `IF(${wordAt(first)}="","",MID(${nameAt(index)},LEN(${wordAt(first)})+LEN(${wordAt(second)})+3,999))`,
      ];
    }),
  };
}

/** The first word of a name that has several. */
const firstOf = (name: string): string => `IF(ISERROR(FIND(" ",${name})),"",LEFT(${name},FIND(" ",${name})-1))`;
