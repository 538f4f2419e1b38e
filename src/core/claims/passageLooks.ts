import type { Looks } from "./judgeAir";
import { findNamed } from "../naming/findNamed";
import { lossFamilies, PLAIN_END } from "../../reference/lossFamilies";
import { HOSE_MATERIAL, materials, SMOOTH_HOSE } from "../../reference/materials";

/** What the tables say of ends and of hoses' walls. */
export const bareEnd = findNamed(lossFamilies, PLAIN_END)!.points[0]!;
export const roundedEnd = findNamed(lossFamilies, "bell mouth manual")!.points[0]!;
export const corrugated = findNamed(materials, HOSE_MATERIAL)!;
export const smoothHose = findNamed(materials, SMOOTH_HOSE)!;

/**
 * Of a hose of a kind, as a data sheet names it. A kind that is not told may be any: smooth at best, corrugated as usual.
 *
 * @param kind corrugated or smooth; none where the sheet does not tell
 * @returns loss coefficients of both ends, and the roughness of the wall at least and as usual [m]
 * @source commonPractice for which of the tables a word of a data sheet means; the rows carry their own
 */
export const looksOf = (kind: string | undefined): Looks => ({
  roundedEnd: roundedEnd.coefficient,
  bareEnd: bareEnd.coefficient,
  leastWall: kind === "corrugated" ? corrugated.low : 0,
  usualWall: kind === "smooth" ? smoothHose.roughness : corrugated.roughness,
});
