import { frictionPerLength } from "../../../src/core/friction/frictionLoss";
import { sectionArea } from "../../../src/core/section/section";
import { equivdiameter } from "../../../src/functions/duct/equivdiameter";
import { friction } from "../../../src/functions/losses/friction";
import { runloss } from "../../../src/functions/losses/runloss";
import { convertunit } from "../../../src/functions/duct/convertunit";
import { cell } from "../cell";
import { HALF_LAST_DIGIT, type PublishedGroup, type PublishedRow } from "../row";
import { loeffler, slideRule } from "./margins";
import { titles } from "./titles";

const GRAVITY = 9.81; // m/s2, as the textbook has it
const POUND_PER_CUBIC_FOOT = 16.01846337; // kg/m3, 0.45359237 / 0.3048^3
const SHORT_JOINTS = 0.006; // in of roughness: 0.0005 ft

/** Cengel: head lost in a smooth plastic duct of 0.267 m, metres of air of 1.145 kg/m3. */
const headLost = (airflow: number, length: number): number =>
  (length * frictionPerLength(airflow, 0.267, 0, 1.145)) / (1.145 * GRAVITY);

/** Airflow at which a rising function reaches a value, by halving. */
function airflowAt(wanted: number, lossOf: (airflow: number) => number): number {
  let [low, high] = [0, 10];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (lossOf(middle) < wanted) low = middle;
    else high = middle;
  }
  return low;
}

const smoothPlastic: readonly PublishedRow[] = [
  {
    id: "F05",
    what: "head lost by 0.35 m³/s of air (1.145 kg/m³) in 150 m of smooth duct, 0.267 m",
    source: `${titles.cengel}, Ex 8-4`,
    printed: "20",
    unit: "m of air",
    tolerance: HALF_LAST_DIGIT,
    compute: () => headLost(0.35, 150),
  },
  {
    id: "F07",
    what: "airflow that loses 20 m of air in 300 m of smooth duct, 0.267 m",
    source: `${titles.cengel}, Ex 8-5`,
    printed: "0.24",
    unit: "m³/s",
    tolerance: HALF_LAST_DIGIT,
    compute: () => airflowAt(20, (airflow) => headLost(airflow, 300)),
  },
];

const textbooks: readonly PublishedRow[] = [
  {
    id: "F04",
    what: "loss of 6000 cfm in 80 ft of 28 in duct, roughness 0.0036 in",
    source: `${titles.dusling}, HVAC page`,
    printed: "0.064",
    unit: "in.w.g.",
    tolerance: {
      relative: 0.01,
      why: "Its own 0.0155 x 80/2.333 x (1400/4005)² is 0.0649; 0.064 fits a velocity pressure rounded to 0.12.",
    },
    compute: () => cell(runloss, 6000, 28, 80, 0.0036),
  },
  {
    id: "F08",
    what: "loss of air at 10 ft/s (0.0763 lb/ft³) in 2000 ft of smooth 18 x 12 in duct, hydraulic diameter 14.4 in",
    source: titles.vennard,
    printed: "3.75",
    unit: "lbf/ft²",
    tolerance: { relative: 0.026, why: "The book reads its friction factor, 0.019, off a chart to two digits." },
    compute: () => {
      const diameter = 14.4 * 0.0254;
      const airflow = 10 * 0.3048 * sectionArea(diameter, null); // the book's velocity in a duct of that diameter
      const loss = frictionPerLength(airflow, diameter, 0, 0.0763 * POUND_PER_CUBIC_FOOT) * 2000 * 0.3048;
      return cell(convertunit, loss, "Pa", "lbf/ft²");
    },
  },
  {
    id: "GF07",
    what: "loss of 500 cfm (0.0797 lb/ft³) in 800 ft of 12 in duct",
    source: titles.deNevers,
    printed: "0.014402",
    unit: "psi",
    tolerance: {
      relative: 0.047,
      why: "The book's friction factor (4 x 0.00465) lies 4.6 % under Colebrook's line for a smooth wall, which we take.",
    },
    compute: () => {
      const airflow = cell(convertunit, 500, "cfm", "m3/s");
      const loss = frictionPerLength(airflow, 0.3048, 0, 0.0797 * POUND_PER_CUBIC_FOOT) * 800 * 0.3048;
      return cell(convertunit, loss, "Pa", "psi");
    },
  },
];

/** Worked with friction per foot in velocity pressures, galvanised duct. */
const exhaustSheets: readonly PublishedRow[] = (
  [
    ["GF01", 1800, 10, 59.04, "0.94", titles.sheet1995],
    ["GF02", 4200, 16, 52.48, "0.39", titles.sheet1995],
    ["GF04", 6500, 20, 26.24, "0.15", titles.sheet1995],
    ["GF05", 1500, 8, 35, "1.2236", titles.filledForm],
  ] as const
).map(([id, airflow, diameter, length, printed, source]) => ({
  id,
  what: `friction of ${airflow} cfm in ${length} ft of ${diameter} in galvanised duct`,
  source,
  printed,
  unit: "in.w.g.",
  tolerance: loeffler,
  compute: () => cell(runloss, airflow, diameter, length, SHORT_JOINTS),
}));

const rectangular: readonly PublishedRow[] = (
  [
    ["GF08", 2375, 400, 300, "1.1"],
    ["GF10", 7125, 600, 500, "0.86"],
    ["GF11", 9500, 700, 600, "0.64"],
  ] as const
).map(([id, airflow, width, height, printed]) => ({
  id,
  what: `friction of ${airflow} m³/h in a galvanised duct of ${width} x ${height} mm, by its equal-friction diameter`,
  source: titles.projectSheet,
  printed,
  unit: "Pa/m",
  tolerance: slideRule,
  compute: () => cell(friction, airflow, cell(equivdiameter, width, height, "SI"), 0.15, null, "SI"),
}));

export const frictionRows: PublishedGroup = {
  title: "friction of straight duct",
  rows: [...textbooks, ...smoothPlastic, ...exhaustSheets, ...rectangular],
};
