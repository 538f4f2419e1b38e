import type { Judged, Verdict } from "../../core/claims/grade";
import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";

/** One check of a claim, in the order of the answer's columns. */
export type ClaimRow = readonly [
  check: string,
  claimed: string | number,
  allowed: string | number,
  unit: string,
  verdict: Verdict,
  why: string,
  source: string,
];

export const CLAIM_HEADER = ["Check", "Their number", "What physics allows", "Unit", "Verdict", "Why", "Source"];

export function judgedRow(
  check: string,
  judged: Judged,
  quantity: Quantity,
  system: UnitSystem,
  why: string,
  source: string,
): ClaimRow {
  const unit = unitOf(quantity, system);
  return [check, fromSI(judged.claimed, unit), fromSI(judged.allowed, unit), unit.label, judged.verdict, why, source];
}

/** A claim that no number can be held against. */
export const untoldRow = (check: string, claimed: string | number, why: string, source: string): ClaimRow => [
  check,
  claimed,
  "",
  "",
  "cannot tell",
  why,
  source,
];
