import type { Verdict } from "../../core/claims/grade";
import type { ClaimKey } from "../../reference/answerColumns";
import { tidy } from "../../reference/claimWords";
import { fromSI, type Unit } from "../../reference/quantities";
import type { Value } from "../answerRows";
import type { Fault } from "./facts";

/** One check of a claim, by the answer's columns, and what to ask the seller so that it can be judged better. */
export interface ClaimRow extends Readonly<Record<ClaimKey, Value>> {
  readonly verdict: Verdict | "not read" | "";
  readonly asks: readonly string[];
}

/** A check as it was judged: numbers in SI and the unit that they are shown in, or a text as it was typed. */
export interface Check {
  readonly check: string;
  readonly claimed: Value;
  readonly allowed?: number | null;
  readonly unit?: Unit;
  readonly verdict: ClaimRow["verdict"];
  readonly why: string;
  readonly source: string;
  readonly asks?: readonly string[];
}

export function rowOf({ check, claimed, allowed = null, unit, verdict, why, source, asks = [] }: Check): ClaimRow {
  const shown = (value: Value): Value => (typeof value === "number" && unit ? tidy(fromSI(value, unit)) : value);
  return {
    check,
    claimed: shown(claimed),
    allowed: allowed === null ? "" : shown(allowed),
    unit: unit?.label ?? "",
    verdict,
    why: why.replace(/\.\.(?=\s|$)/g, "."), // a sentence that ends with "in.w.g."
    source,
    asks,
  };
}

/** A row of the facts that could not be read. */
export const faultRow = ({ row, typed, why }: Fault): ClaimRow =>
  rowOf({
    check: capital(row),
    claimed: typed,
    verdict: "not read",
    why: `${capital(why)}.`,
    source: "",
  });

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
