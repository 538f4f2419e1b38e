import { type ClaimFactKey, claimFacts } from "../../reference/claimFacts";
import type { BlockPlace } from "../budget/block";

/** What stands where in the workings of a claim. */

/** Columns of the rows of the table of facts. */
export const rowColumns = [
  "nameKind",
  "nameTyped",
  "name",
  "nameShown",
  "brackets",
  "once",
  "plain",
  "unit",
  "otherUnit",
  "valueKind",
  "value",
  "valueTyped",
  "valueText",
  "valueShown",
  "filled",
  "fact",
  "given",
  "rows",
  "why",
  "check",
] as const;
export type RowColumn = (typeof rowColumns)[number];
export const rowScalars = ["first", "headOnce", "head", "heading"] as const;
export type RowPlace = BlockPlace<RowColumn, (typeof rowScalars)[number]>;

/** Columns of the facts, in the order of the list of facts. */
export const factColumns = [
  "key",
  "row",
  "kind",
  "raw",
  "text",
  "pattern",
  "sign",
  "whole",
  "part",
  "mantissa",
  "powerSign",
  "powerDigits",
  "rest",
  "named",
  "stray",
  "factor",
  "digits",
  "integer",
  "first",
  "second",
  "firstSI",
  "secondSI",
  "fits",
  "value",
  "wrong",
  "shown",
  "has",
] as const;
export type FactColumn = (typeof factColumns)[number];
export type FactPlace = BlockPlace<FactColumn, never>;

/** The two amounts of the rated point stand below the facts. */
export const RATED_AIRFLOW = claimFacts.length + 1;
export const RATED_PRESSURE = claimFacts.length + 2;
export const FACT_ROWS = claimFacts.length + 2;

/** The row of a fact in that block, from 1. */
export const factRow = (key: ClaimFactKey): number => claimFacts.findIndex((fact) => fact.key === key) + 1;

/** Columns of the lines of the answer: the rows that are not read, a line for each check, the closing one. */
export const lineColumns = [
  "applies",
  "number",
  "check",
  "claimed",
  "allowed",
  "unit",
  "verdict",
  "why",
  "source",
  "ask",
  "otherAsk",
  "asked",
  "cannot",
  "doubted",
  "shows",
] as const;
export type LineColumn = (typeof lineColumns)[number];
export type LinePlace = BlockPlace<LineColumn, "faults" | "checks" | "ok">;
export const lineScalars = ["faults", "checks", "ok"] as const;

/** What kind of thing stands in a cell; 0 for a blank, or a 0, which some programs send for one. */
export const KIND = { text: 1, number: 2, truth: 3, error: 4 } as const;
