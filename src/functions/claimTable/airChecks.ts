import { STANDARD_DENSITY } from "../../core/air/constants";
import { velocityPressure } from "../../core/air/velocityPressure";
import { hoseLoss, judgeInlet, judgeVelocity } from "../../core/claims/judgeAir";
import { meanVelocity, sectionArea } from "../../core/section/section";
import { cite } from "../../reference/citation";
import { claimBounds } from "../../reference/claimBounds";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { type ClaimRow, rowOf } from "./claimRow";
import { CURVE, tidyInWords } from "../../reference/claimWords";
import type { Facts } from "./facts";
import { bareEnd, looksOf, roundedEnd } from "../../core/claims/passageLooks";

/** An airflow without a pressure at it says nothing of a duct. */
export function systemAirflow(facts: Facts, system: UnitSystem): ClaimRow[] {
  const free = facts["free-air airflow"];
  const airflow = free ?? facts.airflow;
  if (airflow === undefined || facts["rated point"] !== undefined) return [];
  const { systemShareLow: low, systemShareHigh: high } = claimBounds;
  const [least, most] = [low, high].map(({ value }) => tidyInWords(value * airflow, "airflow", system));
  const is = free === undefined ? "May be measured" : "Measured";
  return [
    rowOf({
      check: "Airflow on a system",
      claimed: airflow,
      allowed: high.value * airflow,
      unit: unitOf("airflow", system),
      verdict: "cannot tell",
      why: `${is} with nothing on the fan; by common practice a system leaves half to two thirds of it, ${least} to ${most}. Its curve decides.`,
      source: cite(low, high),
      asks: [CURVE],
    }),
  ];
}

/** Whether the claimed pressure draws the claimed airflow through the inlet; without a pressure, how fast it runs there. */
export function inlet(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { "inlet diameter": diameter, airflow } = facts;
  const pressure = facts.pressure ?? facts["shut-off pressure"];
  const any = airflow ?? facts["rated point"]?.airflow ?? facts["free-air airflow"];
  if (any === undefined || diameter === undefined) return [];
  if (airflow === undefined || pressure === undefined)
    return [velocityRow("Velocity in the inlet", any, diameter, system, facts["rated point"] === undefined)];
  const judged = judgeInlet(airflow, pressure, diameter, looksOf(undefined));
  const hose = { diameter, length: null };
  const [bare, round] = [bareEnd, roundedEnd].map((end) =>
    tidyInWords(hoseLoss(airflow, hose, 0, end.coefficient), "pressure", system),
  );
  return [
    rowOf({
      check: "Airflow through the inlet",
      ...judged,
      unit: unitOf("airflow", system),
      why: `${running(airflow, diameter, system)} A bare end takes ${bare}, a well rounded one ${round}, of ${tidyInWords(pressure, "pressure", system)}.`,
      source: cite(bareEnd, roundedEnd),
      asks: judged.verdict === "holds" ? [] : ["with which inlet the airflow was measured"],
    }),
  ];
}

/** How fast an airflow runs, where nothing else is known to hold it against. */
export function velocityRow(
  check: string,
  airflow: number,
  diameter: number,
  system: UnitSystem,
  asked: boolean,
): ClaimRow {
  const judged = judgeVelocity(airflow, diameter);
  const { inletVelocity: low, inletVelocityHigh: high } = claimBounds;
  const [from, to] = [low, high].map(({ value }) => tidyInWords(value, "velocity", system));
  return rowOf({
    check,
    ...judged,
    unit: unitOf("velocity", system),
    why: `${running(airflow, diameter, system)} Above ${from} its pressure decides; above ${to} we doubt it.`,
    source: cite(low, high),
    asks: judged.verdict === "holds" || !asked ? [] : [CURVE],
  });
}

/** "At 1200 cfm the air runs at 6110 fpm, with 2.33 in.w.g. of velocity pressure." */
export function running(airflow: number, diameter: number, system: UnitSystem): string {
  const velocity = meanVelocity(airflow, sectionArea(diameter, null));
  const head = tidyInWords(velocityPressure(velocity, STANDARD_DENSITY), "pressure", system);
  return `At ${tidyInWords(airflow, "airflow", system)} the air runs at ${tidyInWords(velocity, "velocity", system)}, with ${head} of velocity pressure.`;
}
