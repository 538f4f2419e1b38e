import { fittingloss } from "../../../src/functions/losses/fittingloss";
import { losscoefficient } from "../../../src/functions/losses/losscoefficient";
import { airflow } from "../../../src/functions/duct/airflow";
import { cell } from "../cell";
import { EXACTLY, HALF_LAST_DIGIT, type PublishedGroup, type PublishedRow } from "../row";
import { titles } from "./titles";

const smacna4th = "SMACNA HVAC Systems Duct Design, 4th ed., Table A-7, p A.15";
const manual = "Technical manual of a ventilation unit, table 6 (second-hand)";

const coefficient = (text: string): number => cell(losscoefficient, text);

const multipliers: readonly PublishedRow[] = (
  [
    ["K020", 0, "0"],
    ["K021", 20, "0.31"],
    ["K022", 30, "0.45"],
    ["K023", 45, "0.6"],
    ["K024", 60, "0.78"],
    ["K025", 75, "0.9"],
    ["K026", 90, "1.0"],
    ["K027", 110, "1.13"],
    ["K028", 130, "1.2"],
    ["K029", 150, "1.28"],
    ["K030", 180, "1.40"],
  ] as const
).map(([id, angle, printed]) => ({
  id,
  what: `coefficient of a smooth elbow that turns ${angle} degrees, over that of 90 degrees`,
  source: `${smacna4th}; 20, 60, 110 and 180 degrees in ASHRAE Handbook Fundamentals 2005 (SI), p 35.52`,
  printed,
  unit: "",
  tolerance: EXACTLY,
  compute: () => coefficient(`elbow smooth 1.5 ${angle}`) / coefficient("elbow smooth 1.5"),
}));

/** Airflow [m3/h] of air of 1.2 kg/m3 in a 100 mm duct at a printed Reynolds number, by the constants of the model: Re = rho V D / mu. */
const flowAt = (reynolds: number): number => cell(airflow, (reynolds * 1.819e-5) / (1.2 * 0.1), 100, null, "SI");

const slowAir: readonly PublishedRow[] = (
  [
    ["K037", 10_000, "1.4"],
    ["K038", 20_000, "1.26"],
    ["K040", 40_000, "1.14"],
    ["K041", 60_000, "1.09"],
    ["K043", 100_000, "1.04"],
    ["K044", 140_000, "1.0"],
  ] as const
).map(([id, reynolds, printed]) => ({
  id,
  what: `loss of a mitre at a Reynolds number of ${reynolds}, over that of its K as printed`,
  source: smacna4th,
  printed,
  unit: "",
  tolerance: EXACTLY,
  compute: () => {
    const loss = (fitting: string | number): number =>
      cell(fittingloss, flowAt(reynolds), 100, fitting, null, 1.2, "SI");
    return loss("mitre 60") / loss(0.55);
  },
}));

/** The manual prints the share of the difference of velocity pressures; for an area ratio r that is 1 - r^2. */
const expansions: readonly PublishedRow[] = (
  [
    ["K052", 10, "0.28"],
    ["K053", 20, "0.45"],
    ["K055", 40, "0.73"],
  ] as const
).map(([id, angle, printed]) => ({
  id,
  what: `share of the velocity pressures' difference lost in an expansion at ${angle} degrees, area ratio 0.1`,
  source: manual,
  printed,
  unit: "",
  tolerance: EXACTLY,
  compute: () => coefficient(`expansion 0.1 ${angle}`) / (1 - 0.1 ** 2),
}));

/** Loss at a velocity in air of 1.2 kg/m3, as a project sheet prints it beside its coefficient. */
const lossAt = (velocity: number, text: string): number => {
  const flow = cell(airflow, velocity, 300, null, "SI");
  return cell(fittingloss, flow, 300, text, null, 1.2, "SI");
};

const single: readonly PublishedRow[] = [
  {
    id: "K050",
    what: "coefficient of a smooth elbow of 45 degrees over that of 90 degrees, by the same manual",
    source: manual,
    printed: "0.5",
    unit: "",
    tolerance: EXACTLY,
    compute: () => coefficient("elbow smooth manual 1.5 45") / coefficient("elbow smooth manual 1.5 90"),
  },
  {
    id: "K097",
    what: "loss coefficient of an abrupt expansion from diameter 0.5 to 1, area ratio 0.25",
    source: `${titles.fluids}, Borda and Carnot's formula`,
    printed: "0.5625",
    unit: "",
    tolerance: {
      absolute: 0.01,
      why: "We take the straight line between the printed 0.2 and 0.4; of (1 - r)^2 that is at most 0.01 too much.",
    },
    compute: () => coefficient("expansion abrupt 0.25"),
  },
  {
    id: "GK113",
    what: "loss coefficient of a slide gate half open, by another chart",
    source: "US Army Corps of Engineers, Hydraulic Design Chart 330-1, in an open-source package's tests",
    printed: "2.1",
    unit: "",
    tolerance: { absolute: 0.1, why: "The handbook that our table follows prints 2.0 where this chart gives 2.10." },
    compute: () => coefficient("gate part open in water 0.5"),
  },
  {
    id: "GK114",
    what: "coefficient of a tee, main with side flow, as one project used it",
    source: titles.projectSheet,
    printed: "0.96",
    unit: "",
    tolerance: EXACTLY,
    compute: () => coefficient("tee"),
  },
  {
    id: "GK114 loss",
    what: "loss of that tee at 5.50 m/s",
    source: titles.projectSheet,
    printed: "17.41",
    unit: "Pa",
    tolerance: { relative: 0.002, why: "The velocity is printed to three digits, which is 0.2 % in the loss." },
    compute: () => lossAt(5.5, "tee"),
  },
  {
    id: "GK115",
    what: "coefficient of a slight expansion, as one project used it",
    source: titles.projectSheet,
    printed: "0.05",
    unit: "",
    tolerance: EXACTLY,
    compute: () => coefficient("expansion slight"),
  },
  {
    id: "GK115 loss",
    what: "loss of that expansion at 3.14 m/s",
    source: titles.projectSheet,
    printed: "0.30",
    unit: "Pa",
    tolerance: HALF_LAST_DIGIT,
    compute: () => lossAt(3.14, "expansion slight"),
  },
];

export const derivedFittingRows: PublishedGroup = {
  title: "multipliers, shares and losses of fittings",
  rows: [...multipliers, ...slowAir, ...expansions, ...single],
};
