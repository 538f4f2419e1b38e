import { traversePoints } from "../../core/measuring/traversePoints";
import { DUCT_SIZE } from "../../core/section/section";
import { fromSI, unitOf } from "../../reference/quantities";
import type { TraverseRule } from "../../reference/traverseFractions";
import { readChoice, readNumber, readWithin, singleCell } from "../arguments";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { WIDTH } from "../letters";

const RULES: readonly TraverseRule[] = ["log-linear", "log-Tchebycheff"];

/**
 * Points of a duct traverse: a column of depths from the wall at which to hold the probe, in inches (SI: mm).
 * @customfunction TRAVERSEPOINTS
 * @param diameter Inside diameter, or the side that the line follows, in (SI: mm), above 0; one cell
 * @param [points] How many: 4, 6, 8 or 10 (rectangle: 5, 6 or 7); by the duct's size when left out
 * @param [rule] "log-linear" (default, round duct) or "log-Tchebycheff" (along a side of a rectangular duct)
 * @param [units] "IP" (default) or "SI"
 * @returns column of depths
 */
export function traversepoints(
  diameter: unknown[][],
  points?: unknown[][],
  rule?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return inHost(units, (system) => {
    const width = readWithin("diameter", singleCell("diameter", diameter), "diameter", DUCT_SIZE, system);
    const count = singleCell("points", points);
    const number = count === null || count === 0 ? null : readNumber("points", count, "ratio", system);
    const depths = traversePoints(width, number, readChoice("rule", singleCell("rule", rule), RULES));
    return depths.map((depth) => [fromSI(depth, unitOf("diameter", system))]);
  });
}

export const guide: Guide = {
  maths: "Printed fractions of the diameter",
  source: "instrumentManuals",
  basis: "second-hand",
  limits: "In a straight piece, many diameters from bends. Two lines at right angles in a round duct.",
  cautions: ["power off", "fan inlet guard", "ladders"],
  also: ["pitot tube", "anemometer"],
  example: { asks: "Six depths across an 8 in duct", args: ["8", "6"] },
};

export const formula: Formula = {
  tex: ["x_i = D\\,y_i"],
  letters: {
    x_i: "depth from the wall [m]",
    D: WIDTH,
    y_i: "published fraction of the diameter (or side), in the table",
  },
};
