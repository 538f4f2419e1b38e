import { fpm, inchesOfWater } from "./asPrinted";
import type { FilterRow, Provenance } from "./schema";

const costManual: Provenance = {
  source: "epaCostManualMemory",
  locator: "section 6 chapter 1, Table 1.1",
  basis: "from memory",
  checked: null,
};
const course: Provenance = {
  source: "epaCourse412",
  locator: "lesson 7, Table 7-1",
  basis: "read",
  checked: "2026-11-27",
};
const courseMemory: Provenance = {
  source: "epaCourse412Memory",
  locator: "air-to-cloth ratios",
  basis: "from memory",
  checked: null,
};
const powerMemory: Provenance = {
  source: "acgihPowerMemory",
  locator: "pressure drops",
  basis: "from memory",
  checked: null,
};
const cycloneSheet: Provenance = {
  source: "coker1995",
  locator: "chapter 4",
  basis: "second-hand",
  checked: "2026-11-27",
};

/** Filters and cyclones. Rows for leather and paper dust and one worked cyclone are left out: not for a wood shop. */
export const filters: readonly FilterRow[] = [
  {
    key: "cyclone coefficient neutral vane",
    label: "Cyclone with a neutral inlet vane, K in K a b / De²",
    quantity: "coefficient",
    low: 7.5,
    high: 7.5,
    note: "Loss in inlet velocity pressures = K x inlet height x inlet width / outlet diameter squared.",
    ...cycloneSheet,
  },
  {
    key: "cyclone coefficient no vane",
    label: "Cyclone without an inlet vane, K in K a b / De²",
    quantity: "coefficient",
    low: 16,
    high: 16,
    note: "Loss in inlet velocity pressures = K x inlet height x inlet width / outlet diameter squared.",
    ...cycloneSheet,
  },
  {
    key: "cyclone inlet velocity pressures",
    label: "Cyclone loss in inlet velocity pressures, range",
    quantity: "coefficient",
    low: 1,
    high: 20,
    ...cycloneSheet,
  },
  {
    key: "cyclone pressure drop",
    label: "Cyclone, pressure drop",
    quantity: "pressure drop",
    low: inchesOfWater(1),
    high: inchesOfWater(6),
    note: "By size; about 8 inlet velocity pressures.",
    ...powerMemory,
  },
  {
    key: "cyclone size",
    label: "A cyclone's pressure drop goes by its inlet velocity, not by its diameter",
    quantity: "use",
    low: null,
    high: null,
    source: "wangThesis",
    locator: "abstract",
    basis: "read",
    checked: "2026-11-27",
  },
  {
    key: "fabric filter efficiency",
    label: "Fabric filter, collection efficiency it can be designed for, particles under a micrometre",
    quantity: "efficiency",
    low: 0.999,
    high: 0.999,
    ...course,
  },
  {
    key: "fabric filter pressure drop",
    label: "Fabric filter in service, pressure drop",
    quantity: "pressure drop",
    low: inchesOfWater(2),
    high: inchesOfWater(6),
    note: "Designs reckon with 4 to 6 in.w.g.",
    ...powerMemory,
  },
  {
    key: "pulse jet",
    label: "Pulse-jet filter, air-to-cloth ratio, typical",
    quantity: "face velocity",
    low: fpm(5),
    high: fpm(15),
    ...courseMemory,
  },
  {
    key: "pulse jet sawdust",
    label: "Pulse-jet filter of felt, air-to-cloth ratio for sawdust",
    quantity: "face velocity",
    low: fpm(12),
    high: fpm(12),
    ...costManual,
  },
  {
    key: "pulse jet use",
    label: "Pulse-jet filters are listed for woodworking",
    quantity: "use",
    low: null,
    high: null,
    ...course,
  },
  {
    key: "reverse air",
    label: "Reverse-air filter, air-to-cloth ratio, typical",
    quantity: "face velocity",
    low: fpm(1),
    high: fpm(3),
    ...courseMemory,
  },
  {
    key: "shaker",
    label: "Shaker filter, air-to-cloth ratio, typical",
    quantity: "face velocity",
    low: fpm(2),
    high: fpm(6),
    ...courseMemory,
  },
  {
    key: "shaker sawdust",
    label: "Shaker filter of woven cloth, air-to-cloth ratio for sawdust",
    quantity: "face velocity",
    low: fpm(3.5),
    high: fpm(3.5),
    ...costManual,
  },
  {
    key: "shaker use",
    label: "Shaker filters are listed for woodworking processes",
    quantity: "use",
    low: null,
    high: null,
    ...course,
  },
];
