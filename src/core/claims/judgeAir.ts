import { claimBounds } from "../../reference/claimBounds";
import { STANDARD_DENSITY } from "../air/constants";
import { frictionPerLength } from "../friction/frictionLoss";
import { meanVelocity, sectionArea } from "../section/section";
import { grade, type Judged } from "./grade";
import { mostThrough, type Passage, passageLoss } from "./passage";

/** The ends and walls that an inlet or a hose may have: coefficients [-] and roughness [m]. */
export interface Looks {
  readonly roundedEnd: number; // the entry that loses least
  readonly bareEnd: number;
  readonly leastWall: number; // the smoothest wall of its kind; 0 where the kind is not told
  readonly usualWall: number;
}

/** A hose as far as it is told. */
export interface ClaimedHose {
  readonly diameter: number; // [m]
  readonly length: number | null; // [m]
}

/** Velocity [m/s] of an airflow whose pressure is not told: physics forbids none, so it is doubted at most. */
export function judgeVelocity(airflow: number, diameter: number): Judged {
  const claimed = meanVelocity(airflow, sectionArea(diameter, null));
  const { inletVelocity, inletVelocityHigh } = claimBounds;
  const verdict = grade(claimed, { unknownFrom: inletVelocity.value, doubtedFrom: inletVelocityHigh.value });
  return { claimed, allowed: inletVelocity.value, verdict };
}

/** Claimed airflow [m3/s] against what the highest pressure draws through a bare inlet; a rounded one lets more pass. */
export function judgeInlet(airflow: number, pressure: number, diameter: number, looks: Looks): Judged {
  const end = (entry: number): number => mostThrough(pressure, passageOf(diameter, 0, 0, entry));
  const [allowed, rounded] = [end(looks.bareEnd), end(looks.roundedEnd)];
  return { claimed: airflow, allowed, verdict: grade(airflow, { unknownFrom: allowed, doubtedFrom: rounded }) };
}

/**
 * Claimed airflow [m3/s] through a hose against what the highest pressure draws through it. No wall is smoother than a smooth one, so what the
 * smooth wall forbids cannot be; what the least corrugated hose of the table forbids is doubted; between it and a usual hose with a bare end
 * the shape of the end decides. Without a length nothing is known.
 *
 * @param sure whether the fan makes no more than that pressure at any airflow
 */
export function judgeHose(airflow: number, pressure: number, hose: ClaimedHose, looks: Looks, sure: boolean): Judged {
  const { diameter, length } = hose;
  if (length === null) return { claimed: airflow, allowed: null, verdict: "cannot tell" };
  const most = (of: number, wall: number, entry: number): number =>
    mostThrough(of, passageOf(diameter, length, wall, entry));
  const verdict = grade(airflow, {
    unknownFrom: most(pressure, looks.usualWall, looks.bareEnd),
    doubtedFrom: most(pressure, looks.leastWall, looks.roundedEnd),
    ...(sure ? { impossibleFrom: most(claimBounds.allowance.value * pressure, 0, looks.roundedEnd) } : {}),
  });
  return { claimed: airflow, allowed: most(pressure, 0, looks.roundedEnd), verdict };
}

/**
 * What a hose with such an end and wall takes at an airflow; without a length, its end alone.
 *
 * @returns [Pa]
 * @source ashrae2009si Darcy-Weisbach and entry losses, duct design chapter
 */
export const hoseLoss = (airflow: number, { diameter, length }: ClaimedHose, wall: number, entry: number): number =>
  passageLoss(airflow, passageOf(diameter, length ?? 0, wall, entry));

/**
 * The hose that takes the whole of a pressure at an airflow.
 *
 * @returns [m] its length, at least 0
 * @source ashrae2009si Darcy-Weisbach and entry losses, duct design chapter
 */
export function lengthThatTakes(
  pressure: number,
  airflow: number,
  diameter: number,
  wall: number,
  entry: number,
): number {
  const left = pressure - passageLoss(airflow, passageOf(diameter, 0, wall, entry));
  return Math.max(0, left / frictionPerLength(airflow, diameter, wall, STANDARD_DENSITY));
}

/** Velocity [m/s] through a filter against what its medium is laid out for; without its medium, against the least and the most of all. */
export function judgeFaceVelocity(airflow: number, area: number, usual: { low: number; high: number }): Judged {
  const claimed = meanVelocity(airflow, area);
  return { claimed, allowed: usual.high, verdict: grade(claimed, { unknownFrom: usual.low, doubtedFrom: usual.high }) };
}

const passageOf = (diameter: number, length: number, roughness: number, entry: number): Passage => ({
  diameter,
  length,
  roughness,
  entry,
  density: STANDARD_DENSITY,
});
