import { grindingWheels } from "./machines/grindingWheels";
import { woodworkingFromMemory } from "./machines/woodworkingFromMemory";
import { woodworkingRule } from "./machines/woodworkingRule";
import { woodworkingPractice } from "./machines/woodworkingPractice";
import type { MachineRow } from "./schema";

/**
 * Airflow asked for at a machine, the strongest source first: the German rule for wood dust, then US rules for wheels and
 * belts, then what a manual and common practice say of machines of a small shop, then the woodworking plates of an exhaust manual, from memory. Each part is sorted by key.
 * A belt sander's extra 120 mm pick-up (TRGS 553 of 2008) is left out: no airflow was read.
 */
export const machines: readonly MachineRow[] = [
  ...woodworkingRule,
  ...grindingWheels,
  ...woodworkingPractice,
  ...woodworkingFromMemory,
];
