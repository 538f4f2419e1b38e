import type { UnitSystem } from "../../../reference/quantities";
import type { FactKey } from "./facts";

/** What the sheet of claims is filled with, in the units of its frame. */
export interface ClaimsContents {
  readonly invented: string | null; // the sentence that says so
  readonly tryIt: string | null;
  readonly says: Readonly<Partial<Record<FactKey, number | string>>>;
}

export const emptyClaims: ClaimsContents = { invented: null, tryIt: null, says: {} };

const INVENTED = "Invented for trying out: no such machine, vendor or data sheet exists.";

/** Its fan holds together, its airflow is doubtful on any system and for its filter, and its hose cannot pass it. */
const inchPound: ClaimsContents = {
  invented: INVENTED,
  tryIt: "Try it: type 60 for the pressure in B10, press Enter, and read the verdicts.",
  says: {
    airflow: 1650,
    pressure: 9,
    "motor power": 1.5,
    "impeller diameter": 12,
    speed: 3450,
    "filter area": 30,
    "filter rating": "5 micron",
    "hose diameter": 4,
  },
};

/** Its pressure is doubtful for its tip speed; the rest teaches the same as the other. */
const metric: ClaimsContents = {
  invented: INVENTED,
  tryIt: "Try it: type 15000 for the pressure in B10, press Enter, and read the verdicts.",
  says: {
    airflow: 2800,
    pressure: 2200,
    "motor power": 1.1,
    "impeller diameter": 300,
    speed: 2850,
    "filter area": 2.8,
    "filter rating": "5 µm",
    "hose diameter": 100,
  },
};

export const exampleClaims = (units: UnitSystem): ClaimsContents => (units === "SI" ? metric : inchPound);
