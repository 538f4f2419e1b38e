import { basesOf, titlesOf } from "../../../reference/citation";
import type { Provenance } from "../../../reference/schema";
import type { BlockCell } from "./block";

/** The last two columns of every table of printed values: where a figure comes from and how it was read, as in the add-in. */
export const TRUST = ["source", "basis"] as const;

export const trustCells = (rows: readonly Provenance[]): readonly BlockCell[] =>
  rows.length === 0 ? [null, null] : [titlesOf(rows), basesOf(rows)];
