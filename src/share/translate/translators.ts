import { duct } from "./functions/duct";
import { fan } from "./functions/fan";
import { fixedFunctions } from "./functions/fixedFunctions";
import { hoods } from "./functions/hoods";
import { leaks } from "./functions/leaks";
import { lookingUp } from "./functions/lookingUp";
import { losses } from "./functions/losses";
import { measuring } from "./functions/measuring";
import type { Translator } from "./translation";

/** What becomes of a call, by function; BUDGET is in src/share/budget. */
export const translators: ReadonlyMap<string, Translator> = new Map(
  Object.entries({
    ...duct,
    ...losses,
    ...hoods,
    ...leaks,
    ...fan,
    ...measuring,
    ...lookingUp,
    ...fixedFunctions,
  }),
);
