import { STANDARD_DENSITY } from "../../core/air/constants";
import { velocityPressure } from "../../core/air/velocityPressure";
import { judgePassage, judgeSystemAirflow, judgeVelocity } from "../../core/claims/judge";
import { type Passage, passageLoss } from "../../core/claims/passage";
import { findNamed } from "../../core/naming/findNamed";
import { cite } from "../../reference/citation";
import { claimBounds } from "../../reference/claimBounds";
import { lossFamilies, PLAIN_END } from "../../reference/lossFamilies";
import { HOSE_MATERIAL, materials } from "../../reference/materials";
import type { UnitSystem } from "../../reference/quantities";
import { inUnit } from "../runsTable/inUnit";
import { type ClaimRow, judgedRow } from "./claimRow";
import type { Facts } from "./factNames";

const plainEnd = findNamed(lossFamilies, PLAIN_END)!.points[0]!;
const hose = findNamed(materials, HOSE_MATERIAL)!;
const USUAL_HOSE_LENGTH = 3.048; // [m] 10 ft, where a hose is named without its length

/** A free-air airflow is not what a system gets. */
export function systemAirflow({ airflow }: Facts, system: UnitSystem): ClaimRow[] {
  if (airflow === undefined) return [];
  const { systemShareLow: low, systemShareHigh: high } = claimBounds;
  const [least, most] = [low, high].map(({ value }) => inUnit(value * airflow, "airflow", system));
  const why = `A highest airflow is that of a fan with nothing on it; by common practice ducts, hoods and filter leave half to two thirds of it, ${least} to ${most}.`;
  return [judgedRow("Airflow on a system", judgeSystemAirflow(airflow), "airflow", system, why, cite(low, high))];
}

/** What the claimed airflow means in the inlet, and whether the claimed pressure can draw it through a bare pipe end. */
export function inlet(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { airflow, pressure, "inlet diameter": diameter } = facts;
  if (airflow === undefined || diameter === undefined) return [];
  const passage = passageOf(diameter, 0, hose.low);
  const rows = [velocityRow("Velocity in the inlet", airflow, diameter, system)];
  if (pressure === undefined) return rows;
  const judged = judgePassage(airflow, pressure, passage);
  const said = (pascal: number): string => inUnit(pascal, "pressure", system);
  const so =
    judged.verdict === "holds"
      ? "what is left must do for ducts, hoods and filter"
      : "only a free-air test with a rounded inlet can show such an airflow";
  const why = `A bare pipe end of that diameter alone loses ${said(passageLoss(airflow, passage))} (K p_v, K ${plainEnd.coefficient}) of the highest pressure of ${said(pressure)}; ${so}.`;
  return [...rows, judgedRow("Airflow through the inlet", judged, "airflow", system, why, cite(plainEnd))];
}

/** The same through a hose, by its friction; the smoothest hose of the table decides, so that the bound is fair. */
export function hoseFlow(facts: Facts, system: UnitSystem): ClaimRow[] {
  const { airflow, pressure, "hose diameter": diameter, "hose length": given } = facts;
  if (airflow === undefined || diameter === undefined) return [];
  const rows = [velocityRow("Velocity in the hose", airflow, diameter, system)];
  if (pressure === undefined) return rows;
  const length = given ?? USUAL_HOSE_LENGTH;
  const smoothest = passageOf(diameter, length, hose.low);
  const usual = passageOf(diameter, length, hose.roughness);
  const said = (passage: Passage): string => inUnit(passageLoss(airflow, passage), "pressure", system);
  const long = `${inUnit(length, "length", system)} of hose${given === undefined ? " (a length assumed)" : ""}`;
  const why = `At the claimed airflow a bare end and ${long}, drawn out, lose at least ${said(smoothest)} (K p_v and friction), ${said(usual)} with ordinary hose; the highest pressure of ${inUnit(pressure, "pressure", system)} draws no more than the bound through them.`;
  const judged = judgePassage(airflow, pressure, smoothest);
  return [...rows, judgedRow("Airflow through the hose", judged, "airflow", system, why, cite(plainEnd, hose))];
}

function velocityRow(check: string, airflow: number, diameter: number, system: UnitSystem): ClaimRow {
  const judged = judgeVelocity(airflow, diameter);
  const bound = claimBounds.inletVelocity;
  const [head, limit] = [
    inUnit(velocityPressure(judged.claimed, STANDARD_DENSITY), "pressure", system),
    inUnit(bound.value, "velocity", system),
  ];
  const why = `V = Q/A at the claimed airflow, with ${head} of velocity pressure in standard air; above ${limit} we doubt it, a judgement.`;
  return judgedRow(check, judged, "velocity", system, why, cite(bound));
}

const passageOf = (diameter: number, length: number, roughness: number): Passage => ({
  diameter,
  length,
  roughness,
  entry: plainEnd.coefficient,
  density: STANDARD_DENSITY,
});
