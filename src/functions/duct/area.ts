import { sectionArea } from "../../core/section/section";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { SECTION, WIDTH } from "../letters";
import { DIAMETER, HEIGHT, signature } from "../signature";

export const takes = signature({ diameter: DIAMETER, height: HEIGHT }, "area");

/**
 * Cross-section of a round duct, or with a height of a rectangle, in ft² (SI: m²).
 * @customfunction AREA
 * @param diameter Inside diameter, or width of a rectangle, in (SI: mm), above 0
 * @param [height] Height of a rectangular duct, in (SI: mm); leave out for a round one
 * @param [units] "IP" (default) or "SI"
 * @returns area
 */
export function area(diameter: unknown[][], height?: unknown[][], units?: unknown[][]): unknown[][] {
  return answerOf(takes, [diameter, height, units], ({ diameter, height }) => sectionArea(diameter, height));
}

export const guide: Guide = {
  maths: "A = π d² / 4; a rectangle: A = w h",
  source: "geometry",
  basis: "",
  limits: "Inside sizes. A meter must be given the area at its probe, not that of another duct.",
  also: ["cross section"],
  example: { asks: "Cross-section of a 4 in duct", args: ["4"] },
};

export const formula: Formula = {
  tex: ["A = \\frac{\\pi}{4}D^2 \\quad\\text{or}\\quad A = W H"],
  letters: { A: SECTION, D: WIDTH, W: "width [m]", H: "height [m]" },
};
