import type { ClaimFactKey } from "../../../reference/claimFacts";
import type { UnitSystem } from "../../../reference/quantities";

/** What the sheet of claims is filled with, in the units of its frame. */
export interface ClaimsContents {
  readonly invented: string | null; // the sentence that says so
  readonly tryIt: string | null;
  readonly says: Readonly<Partial<Record<ClaimFactKey, number | string>>>;
}

export const emptyClaims: ClaimsContents = { invented: null, tryIt: null, says: {} };

const INVENTED = "Invented: no such machine, vendor or data sheet exists.";

/** Its rated point asks more of the motor than it has; its wheel and supply are in order, its filter is too small, its hose cannot be judged. */
const inchPound: ClaimsContents = {
  invented: INVENTED,
  tryIt: "Try it: type 1650 at 3 in B13, press Enter, and read the verdicts.",
  says: {
    "free-air airflow": "2,400 CFM",
    "rated point": "1650 at 9",
    "motor power": 1.5,
    volts: 230,
    amps: 8,
    phases: 1,
    "impeller diameter": 12,
    "wheel kind": "radial",
    stages: 1,
    speed: 3450,
    "filter area": 30,
    "filter medium": "pleated cartridge",
    "filter rating": "5 micron",
    "hose diameter": 4,
    sound: "75 dB",
    "noise distance": 10,
  },
};

/** Its pressure is doubtful for its tip speed; the rest teaches the same as the other. */
const metric: ClaimsContents = {
  invented: INVENTED,
  tryIt: "Try it: type 2800 at 700 in B13, press Enter, and read the verdicts.",
  says: {
    "free-air airflow": "4100 m³/h",
    "rated point": "2800 at 2200",
    "motor power": 1.1,
    volts: 400,
    amps: 2.6,
    phases: 3,
    "impeller diameter": 300,
    "wheel kind": "radial",
    stages: 1,
    speed: 2850,
    "filter area": 2.8,
    "filter medium": "felt bag",
    "filter rating": "5 µm",
    "hose diameter": 100,
    sound: "75 dB",
    "noise distance": 3,
  },
};

export const exampleClaims = (units: UnitSystem): ClaimsContents => (units === "SI" ? metric : inchPound);
