import type { Judged, Verdict } from "../../core/claims/grade";
import type { ClaimKey } from "../../reference/answerColumns";
import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";
import type { Value } from "../answerRows";

/** One check of a claim, by the answer's columns. */
export interface ClaimRow extends Readonly<Record<ClaimKey, Value>> {
  readonly verdict: Verdict;
}

export function judgedRow(
  check: string,
  judged: Judged,
  quantity: Quantity,
  system: UnitSystem,
  why: string,
  source: string,
): ClaimRow {
  const unit = unitOf(quantity, system);
  return {
    check,
    claimed: fromSI(judged.claimed, unit),
    allowed: fromSI(judged.allowed, unit),
    unit: unit.label,
    verdict: judged.verdict,
    why,
    source,
  };
}

/** A claim that no number can be held against. */
export const untoldRow = (check: string, claimed: Value, why: string, source: string): ClaimRow => ({
  check,
  claimed,
  allowed: "",
  unit: "",
  verdict: "cannot tell",
  why,
  source,
});
