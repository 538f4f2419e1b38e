import { claimColumns } from "../../reference/answerColumns";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { hoseFlow, inlet, systemAirflow } from "./airChecks";
import { type ClaimRow, untoldRow } from "./claimRow";
import type { Facts } from "./factNames";
import { airPower, tip } from "./fanChecks";
import { faceVelocity, filterRating, soundLevel } from "./otherChecks";

const checks: readonly ((facts: Facts, system: UnitSystem) => ClaimRow[])[] = [
  systemAirflow,
  inlet,
  airPower,
  tip,
  faceVelocity,
  filterRating,
  hoseFlow,
  soundLevel,
];

const NOTHING = untoldRow("No check", "", "These facts allow no check: most need the airflow or the pressure too.", "");

/** The answer of CLAIM: a header row, and a row for each check that the facts allow. */
export function claimTable(facts: Facts, system: UnitSystem): Value[][] {
  const rows = checks.flatMap((check) => check(facts, system));
  const body = (rows.length === 0 ? [NOTHING] : rows).map((row) => answerRow(claimColumns, row, system));
  return [headerRow(claimColumns, system), ...body];
}
