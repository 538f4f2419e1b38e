import { branches } from "./fittings/branches";
import { contractions } from "./fittings/contractions";
import { elbowsByDiameter } from "./fittings/elbowsByDiameter";
import { elbowsByRadius } from "./fittings/elbowsByRadius";
import { expansions } from "./fittings/expansions";
import { fanInletElbows } from "./fittings/fanInletElbows";
import { gates } from "./fittings/gates";
import { mitres } from "./fittings/mitres";
import { outlets } from "./fittings/outlets";
import { bellMouths } from "./hoods/bellMouths";
import { cones } from "./hoods/cones";
import { ductEnds } from "./hoods/ductEnds";
import { machineHoods } from "./hoods/machineHoods";
import { machinePorts } from "./hoods/machinePorts";
import type { LossFamily } from "./schema";

export { BRANCH } from "./fittings/branches";
export { EXIT } from "./fittings/outlets";
export { PLAIN_END } from "./hoods/ductEnds";

/**
 * Every fitting and hood entry that has a name, fittings first.
 *
 * Left out on purpose: figures that a library computes from a formula (Rennels, Miller, Crane, Hooper), because they are
 * no table of a book (what ducts lose that meet is computed, `core/fittings/junction.ts`); one elbow of 0.13 in a filled form that does not say which elbow it is; and the correction formula
 * for compressed hose, which is from memory and stands in words under the material "hose".
 */
export const lossFamilies: readonly LossFamily[] = [
  ...elbowsByRadius,
  ...elbowsByDiameter,
  ...mitres,
  ...branches,
  ...contractions,
  ...expansions,
  ...gates,
  ...outlets,
  ...fanInletElbows,
  ...ductEnds,
  ...bellMouths,
  ...cones,
  ...machineHoods,
  ...machinePorts,
];
