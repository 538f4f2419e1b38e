import type { RatedPoint } from "../../core/claims/judgePower";
import type { claimFacts } from "../../reference/claimFacts";

type Fact = (typeof claimFacts)[number];
type Read<Kind> = Kind extends "amount"
  ? number
  : Kind extends "pair"
    ? RatedPoint
    : Kind extends "words"
      ? string
      : string | number;

/** The facts that were given: numbers in SI (speed in rpm), words by their keys, texts as typed. */
export type Facts = { readonly [One in Fact as One["key"]]?: Read<One["takes"]["kind"]> } & {
  readonly "unrated power"?: number; // a motor's, of which a peak or what it takes in was told
};

/** A row that could not be read, with the sentence that says why. */
export interface Fault {
  readonly row: string; // what the row is called
  readonly typed: string | number;
  readonly why: string;
}
