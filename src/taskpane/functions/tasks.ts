import type { Task } from "./guide";
import { fan } from "./tasks/fan";
import { frictionAndLosses } from "./tasks/friction";
import { hoods } from "./tasks/hoods";
import { leaks } from "./tasks/leaks";
import { lookingUp } from "./tasks/lookingUp";
import { measuring } from "./tasks/measuring";
import { velocityAndSize } from "./tasks/velocity";
import { vendorNumbers } from "./tasks/vendorNumbers";
import { wholeTables } from "./tasks/wholeTables";

/** Every function, by what one wants to do. */
export const tasks: readonly Task[] = [
  velocityAndSize,
  frictionAndLosses,
  hoods,
  leaks,
  fan,
  measuring,
  vendorNumbers,
  wholeTables,
  lookingUp,
];
