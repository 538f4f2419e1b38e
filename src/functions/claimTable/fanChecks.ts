import { STANDARD_DENSITY } from "../../core/air/constants";
import { tipSpeed } from "../../core/claims/fanBounds";
import { judgePower, judgeTipPressure } from "../../core/claims/judge";
import { cite } from "../../reference/citation";
import { claimBounds } from "../../reference/claimBounds";
import type { UnitSystem } from "../../reference/quantities";
import type { Provenance } from "../../reference/schema";
import { inUnit } from "../runsTable/inUnit";
import { type ClaimRow, judgedRow } from "./claimRow";
import type { Facts } from "./factNames";

const SECONDS = 60; // in a minute: speed comes in rpm

const euler: Provenance = {
  source: "eulerMemory",
  locator: "p = ρ u² without pre-rotation",
  basis: "from memory",
  checked: null,
};

const percentOf = (share: number): string => `${Math.round(100 * share)} %`;

/** No fan puts more into the air than its motor gives out. */
export function airPower(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { airflow, pressure, "motor power": motor } = facts;
  if (airflow === undefined || pressure === undefined || motor === undefined) return [];
  const bound = claimBounds.efficiency;
  const why = `Airflow x pressure / 4 is the best point of the straight line between the curve's two ends, and an ordinary fan's curve bulges above it; no motor gives out more than its ${inUnit(motor, "power", system)}, and above ${percentOf(bound.value)} of that we doubt it, a judgement.`;
  const judged = judgePower(airflow, pressure, motor);
  return [judgedRow("Air power against the motor", judged, "power", system, why, cite(euler, bound))];
}

/** No wheel makes more pressure than its tip speed allows. */
export function tip(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { pressure, "impeller diameter": diameter, speed } = facts;
  if (pressure === undefined || diameter === undefined || speed === undefined) return [];
  const bound = claimBounds.tipPressure;
  const fast = inUnit(tipSpeed(diameter, speed / SECONDS), "velocity", system);
  const why = `Its tip runs at ${fast} (u = π D N), and blades that are radial or lean back make at most ρu² in standard air, from ${percentOf(bound.value)} of which we doubt it, a judgement; forward-curved ones, which clog with dust, can pass it.`;
  const judged = judgeTipPressure(pressure, diameter, speed / SECONDS, STANDARD_DENSITY);
  return [judgedRow("Pressure against the tip speed", judged, "pressure", system, why, cite(euler, bound))];
}
