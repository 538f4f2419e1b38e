import { claimColumns } from "../../reference/answerColumns";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { inlet, systemAirflow } from "./airChecks";
import { type ClaimRow, faultRow, rowOf } from "./claimRow";
import type { Facts, Fault } from "./facts";
import { faceVelocity, filterRating } from "./filterChecks";
import { hoseFlow } from "./hoseChecks";
import { inShort } from "./inShort";
import { soundLevel } from "./otherChecks";
import { airPower, efficiency, supply, unratedPower } from "./powerChecks";
import { tip, wheelFlow } from "./wheelChecks";

const checks: readonly ((facts: Facts, system: UnitSystem) => ClaimRow[])[] = [
  systemAirflow,
  inlet,
  unratedPower,
  airPower,
  supply,
  efficiency,
  tip,
  wheelFlow,
  faceVelocity,
  filterRating,
  hoseFlow,
  soundLevel,
];

const NOTHING = rowOf({
  check: "No check",
  claimed: "",
  verdict: "cannot tell",
  why: "These facts allow no check: most need the airflow or the pressure too.",
  source: "",
});

/** The answer of CLAIM: a header row, the rows that could not be read, a row for each check that the facts allow, and a closing one. */
export function claimTable(given: { facts: Facts; faults: readonly Fault[] }, system: UnitSystem): Value[][] {
  const { facts, faults } = given;
  const rows = checks.flatMap((check) => check(facts, system));
  const body =
    rows.length === 0 && faults.length === 0
      ? [NOTHING]
      : [...faults.map(faultRow), ...rows, ...(rows.length === 0 ? [] : [inShort(facts, rows, system)])];
  return [headerRow(claimColumns, system), ...body.map((row) => answerRow(claimColumns, row, system))];
}
