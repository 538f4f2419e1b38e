import { exampleCurve } from "../exampleTables";
import { scaledCurve } from "../fanTable/scaledCurve";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";

/**
 * A fan curve at another speed, air density or size (no unit: the answer is in the curve's own units, cfm or m³/h ...).
 * @customfunction FANLAW
 * @param curve Two columns: airflow and fan static pressure, any units; a heading row is allowed
 * @param speedratio New speed / rated speed, above 0 to 10
 * @param [densityratio] New air density / rated density, above 0 to 10; 1 when left out
 * @param [sizeratio] New impeller diameter / rated diameter (same shape), above 0 to 10; 1 when left out
 * @returns curve
 */
export function fanlaw(
  curve: unknown[][],
  speedratio: unknown[][],
  densityratio?: unknown[][],
  sizeratio?: unknown[][],
): unknown[][] {
  return inHost(null, () => scaledCurve(curve, speedratio, densityratio, sizeratio));
}

export const guide: Guide = {
  maths: "Q ~ n D³, p ~ ρ n² D²",
  source: "cengel2006",
  basis: "second-hand",
  limits: "The same fan only. The motor's power grows with the cube of the speed: mind its plate.",
  cautions: ["wheel over-speed"],
  also: ["rpm", "fan speed", "affinity laws", "pulley", "impeller", "blower"],
  example: { asks: "The invented fan at 1.1 times its speed", args: [exampleCurve, "1.1"] },
};

export const formula: Formula = {
  tex: ["\\frac{Q_2}{Q_1} = n\\,d^3, \\qquad \\frac{p_2}{p_1} = n^2 d^2 r"],
  letters: { n: "speed ratio", d: "size ratio", r: "density ratio" },
};
