import { air } from "./functions/air";
import { devices } from "./functions/devices";
import { duct } from "./functions/duct";
import { fans } from "./functions/fans";
import { fittings } from "./functions/fittings";
import { fixedFunctions } from "./functions/fixedFunctions";
import { leaks } from "./functions/leaks";
import { measuring } from "./functions/measuring";
import { tables } from "./functions/tables";
import type { Translator } from "./translation";

/** What becomes of a call, by function; BUDGET is in src/share/budget. */
export const translators: ReadonlyMap<string, Translator> = new Map(
  Object.entries({
    ...duct,
    ...air,
    ...devices,
    ...fittings,
    ...leaks,
    ...measuring,
    ...fans,
    ...tables,
    ...fixedFunctions,
  }),
);
