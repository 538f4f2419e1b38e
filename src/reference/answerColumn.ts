import type { Quantity } from "./quantities";

/** A column of the answer of a whole-table function: readers go by its key, wherever it stands. */
export interface AnswerColumn {
  readonly key: string;
  readonly header: string;
  readonly quantity: Quantity | null; // its unit stands in the header; null for words and for what says its unit itself
}
