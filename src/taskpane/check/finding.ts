import { sources } from "../../reference/sources";
import type { Seen } from "./seenIn";

/** Something that an experienced person would see in a budget, and where. */
export interface Finding {
  readonly rule: string; // what kind it is, in two or three words
  readonly what: string; // the fact, one sentence
  readonly why: string; // why it matters and what helps
  readonly source: string;
  readonly sheet: string;
  readonly at: string;
}

export type CheckRule = (seen: Seen) => Finding[];

/** What a finding says that rests on no row of a table. */
export const practice = sources.commonPractice.title;
