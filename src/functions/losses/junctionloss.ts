import { BRANCH_ANGLES } from "../../core/fittings/junction";
import { junctionLoss } from "../../core/fittings/junctionLoss";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { AIR, FLOW, SECTION, VELOCITY_PRESSURE } from "../letters";
import { AIRFLOW, DENSITY, DIAMETER, HEIGHT, needed, signature, word } from "../signature";

export const takes = signature(
  {
    angle: needed("angle", BRANCH_ANGLES),
    branchairflow: AIRFLOW,
    mainairflow: AIRFLOW,
    branchdiameter: DIAMETER,
    maindiameter: DIAMETER,
    straightdiameter: HEIGHT,
    leg: word("branch", "straight"),
    density: DENSITY,
  },
  "pressure",
);

/**
 * Loss at a junction by airflows and sizes, of the branch or of the straight duct, in in.w.g. (SI: Pa); may be below 0.
 * @customfunction JUNCTIONLOSS
 * @param angle Angle between branch and main, degrees, 10 to 90
 * @param branchairflow Airflow of the branch, cfm (SI: m³/h), at least 0
 * @param mainairflow Airflow of the main behind the junction, the branch's in it, cfm (SI: m³/h)
 * @param branchdiameter Inside diameter of the branch, in (SI: mm), above 0
 * @param maindiameter Inside diameter of the main behind the junction, in (SI: mm), above 0
 * @param [straightdiameter] Inside diameter of the straight duct before the junction, in (SI: mm); the main's when left out
 * @param [leg] "branch" (default) or "straight": whose loss it is
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function junctionloss(
  angle: unknown[][],
  branchairflow: unknown[][],
  mainairflow: unknown[][],
  branchdiameter: unknown[][],
  maindiameter: unknown[][],
  straightdiameter?: unknown[][],
  leg?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(
    takes,
    [angle, branchairflow, mainairflow, branchdiameter, maindiameter, straightdiameter, leg, density, units],
    ({ leg, ...junction }) => junctionLoss(junction, leg),
  );
}

export const guide: Guide = {
  maths: "Δp = C (p_v main + p_v own - Σ 2 cos α (Q/Q main)² (A main/A) p_v main)",
  source: "crane410",
  basis: "second-hand",
  limits:
    "Total pressure, and below 0 where the faster stream draws the slower one along. Over the velocity pressure of the leg's own duct it is that duct's K, over the main's it is K as the source prints it. The source has the straight duct as wide as the main and 30° to 90°; the rest is its balance of momentum alone. The older practice adds static pressures, so its figures for a branch are not these.",
  also: ["wye", "branch", "lateral", "tee", "junction", "pressure loss"],
  example: { asks: "A 4 in branch with 400 cfm into a 6 in main, 45°", args: ["45", "400", "1000", "4", "6"] },
};

export const formula: Formula = {
  tex: [
    "\\Delta p_b = C\\left(p_{v,m} + p_{v,b} - M\\right), \\qquad \\Delta p_s = p_{v,m} + p_{v,s} - M - t\\,y\\,p_{v,m}",
    "M = \\frac{\\rho}{A_m}\\left(\\frac{Q_b^2\\cos\\alpha}{A_b} + \\frac{Q_s^2}{A_s}\\right), \\qquad y = \\frac{Q_b}{Q_m}",
    "C = 1 - w\\left(1 - \\max(0.9(1-y),\\ 0.55)\\right), \\qquad w = 1 - \\frac{A_m - A_s}{A_b},\\ \\text{from 0 to 1}",
  ],
  letters: {
    p_v: `${VELOCITY_PRESSURE}, of the main m, the branch b, the straight duct s`,
    Q: FLOW,
    A: SECTION,
    "\\rho": AIR,
    "\\alpha": "angle between branch and main",
    w: "0 for a branch of at most 0.35 of the main's area",
    t: "0.45 at 90°, 0 up to 60°, along a line between",
  },
};
