import type { UnitSystem } from "../../reference/quantities";
import { luthiers } from "./luthiers";
import { shed } from "./shed";
import type { Workshop } from "./workshop";

/** The invented example of each unit system: two workshops of their own, not one converted. */
export const workshops: Readonly<Record<UnitSystem, Workshop>> = { IP: shed, SI: luthiers };
