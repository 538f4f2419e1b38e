import { requireWithin } from "../errors";
import { type HoseText, MOST_COMPRESSED } from "./hoseText";

/** A hose that hangs in a bow, as hoses mostly do: "typical of field installations". Source: lbnlFlex, abstract. */
export const AS_IT_HANGS = 4;

export const PER_PERCENT = 0.58;
export const PER_INCH = -0.126;

/**
 * How many times as much a hose costs as it lies than drawn out, per length.
 *
 *     1 + 0.58 r exp(-0.126 D),  r = compression in percent, D = diameter in inches; 4 as it hangs
 *
 * Measured on insulated ventilation hose of 6 to 10 in; a narrower one comes out dearer by the same formula. A hose with a
 * stiff wall may cost less.
 *
 * @param diameter [m] above 0
 * @param lies how it lies
 * @returns [-] at least 1
 * @throws DomainError if the diameter is not above 0 or the compression is beyond what was measured
 * @source ashraeDuctMemory the correction formula, from memory; its figure for a hose that hangs is read in lbnlFlex
 */
export function hoseFactor(diameter: number, lies: HoseText["lies"]): number {
  requireWithin("diameter", diameter, { above: 0 }, "m");
  if (lies === "drawn out") return 1;
  if (lies === "as it hangs") return AS_IT_HANGS;
  requireWithin("compressed", lies.compressed, { atLeast: 0, atMost: MOST_COMPRESSED }, "%");
  return 1 + PER_PERCENT * lies.compressed * Math.exp((PER_INCH * diameter) / 0.0254);
}
