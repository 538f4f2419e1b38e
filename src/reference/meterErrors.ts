import { fpm } from "./asPrinted";
import type { Provenance, ReferenceRow } from "./schema";
import { usualErrors } from "./usualErrors";

/** How far a reading may be off, by instrument. */
export interface MeterRow extends ReferenceRow {
  readonly percentLow: number | null; // [-] share of the reading, plus or minus
  readonly percentHigh: number | null;
  readonly floorLow: number | null; // [m/s] plus or minus, whatever the reading
  readonly floorHigh: number | null;
  readonly length: number | null; // [m] plus or minus, of a diameter
  readonly velocityLow: number | null; // [m/s] below it the instrument is no longer to be trusted
}

const none = {
  percentLow: null,
  percentHigh: null,
  floorLow: null,
  floorHigh: null,
  length: null,
  velocityLow: null,
} as const;

const figures: Provenance = {
  source: "meterFiguresMemory",
  locator: "accuracy of anemometers",
  basis: "from memory",
  checked: null,
};
const practice: Provenance = {
  source: "commonPractice",
  locator: "measuring a duct",
  basis: "common practice",
  checked: null,
};

/** Instruments and what their readings are worth; the instrument's own certificate comes before any row here. */
export const meterErrors: readonly MeterRow[] = [
  {
    key: "hot wire",
    label: "Hot-wire anemometer",
    ...none,
    percentLow: 0.03,
    percentHigh: 0.05,
    note: "Dust on the wire makes it read low.",
    ...figures,
  },
  {
    key: "pitot tube",
    label: "Pitot tube with a liquid gauge",
    ...none,
    velocityLow: fpm(600),
    note: "Below 600 to 800 fpm the velocity pressure, 0.02 to 0.04 in.w.g., is too small to read.",
    source: "acgihMemory",
    locator: "chapter on testing",
    basis: "from memory",
    checked: null,
  },
  {
    key: "rotating vane",
    label: "Rotating-vane anemometer",
    ...none,
    percentLow: 0.02,
    percentHigh: usualErrors.percent,
    floorLow: 0.1,
    floorHigh: usualErrors.floor,
    note: "The cautious ends are what AIRFLOWERROR takes where nothing is given.",
    ...figures,
  },
  {
    key: "tape measure",
    label: "Diameter by tape or rule",
    ...none,
    length: usualErrors.diameter,
    note: "What AIRFLOWERROR takes where nothing is given; dents and ovality can be more.",
    ...practice,
  },
];
