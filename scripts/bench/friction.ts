import { frictionFactor } from "../../src/core/friction/frictionFactor";
import { type Measured, timeRatio } from "./measure";

/** Reynolds numbers and walls of workshop ducts, spread evenly over their orders of magnitude. */
const samples = Array.from({ length: 1000 }, (_, index) => ({
  reynolds: 5000 * 400 ** ((index % 40) / 39),
  wall: 1e-5 * 3000 ** (Math.floor(index / 40) / 24),
}));

/** Haaland's explicit formula, bare of the checks that our own function makes of its arguments. Source: haaland1983. */
function haaland(reynolds: number, wall: number): number {
  const root = (-1.8 / Math.LN10) * Math.log((wall / 3.7) ** 1.11 + 6.9 / reynolds);
  return 1 / (root * root);
}

/** Time of Colebrook-White to machine precision, checks included, over time of one evaluation of Haaland's formula. */
export function colebrookOverHaaland(): Measured {
  let kept = 0; // so that the engine may not leave the work out
  const over = (factor: (reynolds: number, wall: number) => number) => () => {
    for (const { reynolds, wall } of samples) kept += factor(reynolds, wall);
  };
  const ratio = timeRatio(over(frictionFactor), over(haaland));
  if (!Number.isFinite(kept)) throw new Error("a friction factor was not finite");
  return ratio;
}
