import { DENSITY_LIMITS } from "../air/constants";
import { requireWithin } from "../errors";
import { DUCT_SIZE, sectionArea } from "../section/section";
import { BRANCH_ANGLES, junctionOf, legLoss, pushOf } from "./junction";

/** One branch that joins a straight main; the diameters are those of the branch, of the main and of the straight duct before it. */
export interface OneBranch {
  readonly angle: number; // [degrees] 10 to 90
  readonly branchairflow: number; // [m3/s] 0 to the main's
  readonly mainairflow: number; // [m3/s] at least 0, the branch's in it
  readonly branchdiameter: number; // [m]
  readonly maindiameter: number; // [m]
  readonly straightdiameter: number | null; // [m] null: the main's
  readonly density: number; // [kg/m3]
}

/**
 * Loss of total pressure where one branch joins a main, of the branch or of the straight duct.
 *
 * @param junction its airflows and sizes
 * @param leg whose loss
 * @returns [Pa] below 0 where the other stream draws this one along; 0 where nothing flows
 * @throws DomainError if an argument is outside its range, named as here
 * @source crane410 by legLoss
 */
export function junctionLoss(junction: OneBranch, leg: "branch" | "straight"): number {
  const { angle, branchairflow, mainairflow, branchdiameter, maindiameter, density } = junction;
  const straightdiameter = junction.straightdiameter ?? maindiameter;
  requireWithin("angle", angle, BRANCH_ANGLES, "degrees");
  requireWithin("mainairflow", mainairflow, { atLeast: 0 }, "m³/s");
  requireWithin("branchairflow", branchairflow, { atLeast: 0, atMost: mainairflow }, "m³/s");
  for (const [name, size] of Object.entries({ branchdiameter, maindiameter, straightdiameter }))
    requireWithin(name, size, DUCT_SIZE, "m");
  requireWithin("density", density, DENSITY_LIMITS, "kg/m³");
  const ducts = [
    { area: sectionArea(branchdiameter, null), angle },
    { area: sectionArea(straightdiameter, null), angle: null },
  ];
  const airflows = [branchairflow, mainairflow - branchairflow];
  const geometry = junctionOf(sectionArea(maindiameter, null), ducts, density);
  const place = leg === "branch" ? 0 : 1;
  return legLoss(geometry, place, airflows[place]!, mainairflow, pushOf(geometry, airflows)).loss;
}
