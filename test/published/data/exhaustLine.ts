/**
 * A whole exhaust line, worked by the velocity-pressure method on a filled sheet: three suction segments and an outlet.
 *
 * How the comparison is made. Each segment's air, velocity pressure and losses stand on the sheet and are compared one by
 * one; air that joins at B and C comes from branches the sheet does not show, so here two wide, lossless ones bring it.
 * The sheet books static pressures. It sets the hood's suction at 1.5 velocity pressures of the first segment (0.68) and
 * adds losses, and so leaves out that the last segment's velocity pressure is larger (0.84): 0.16 in.w.g. The design pass
 * books total pressures, in which that gain is counted. So against 4.69 and 4.30 it comes out 0.16 higher from there, and
 * 2 to 4 % of the friction lower, since the sheet's friction is Loeffler's. Both together are within 4 %.
 */
import { STANDARD_DENSITY } from "../../../src/core/air/constants";
import { cfm, feet, inches } from "../../../src/reference/asPrinted";
import { fromSI, type Quantity, unitOf } from "../../../src/reference/quantities";
import { sectionArea } from "../../../src/core/section/section";
import { fittingloss } from "../../../src/functions/losses/fittingloss";
import { budgetOf, makeRun } from "../../support/runs";
import { cell } from "../cell";
import { HALF_LAST_DIGIT, type Margin, type PublishedGroup, type PublishedRow, type Tolerance } from "../row";
import { loeffler } from "./margins";
import { titles } from "./titles";

const ELBOW = 0.27; // each, velocity pressures, as the sheet has it
const ENTRY = 0.28;
const wall = { roughness: feet(0.0005) };
const wide = { diameter: 10, hood: 0 };

const budget = budgetOf(
  [
    makeRun("A-B", "B-C", {
      ...{ diameter: inches(10), length: feet(59.04), coefficient: ENTRY, hood: 0.5, wantedAirflow: cfm(1800) },
      ...wall,
    }),
    makeRun("at B", "B-C", { ...wide, wantedAirflow: cfm(4200 - 1800) }),
    makeRun("B-C", "C-D", { diameter: inches(16), length: feet(52.48), coefficient: 3 * ENTRY, ...wall }),
    makeRun("at C", "C-D", { ...wide, wantedAirflow: cfm(6500 - 4200) }),
    makeRun("C-D", "fan", { diameter: inches(18), length: feet(52.48), coefficient: 2 * ELBOW + 3 * ENTRY, ...wall }),
    makeRun("J-K", "", {
      ...{ side: "discharge", diameter: inches(20), length: feet(26.24), coefficient: ELBOW + ENTRY },
      ...wall,
    }),
  ],
  { density: STANDARD_DENSITY, hoseRoughness: 0, plainEnd: 0 },
);

const inUnit = (value: number, quantity: Quantity): number => fromSI(value, unitOf(quantity, "IP"));

const pi: Margin = { relative: 0.0006, why: "The sheet takes 3.14 for pi." };
const pressureUnit: Margin = {
  relative: 0.002,
  why: "The sheet takes 3.14 for pi and V = 4005 sqrt(VP), together 0.2 %.",
};
const bookkeeping: Margin = {
  relative: 0.04,
  why: "Loeffler's friction, and the velocity pressure gained from first to last segment, which the sheet leaves out.",
};

const figure = (
  where: string,
  what: string,
  printed: string,
  quantity: Quantity,
  tolerance: Tolerance,
  value: () => number,
): PublishedRow => ({
  id: `GW1 ${where} ${what}`,
  what: `exhaust line, ${where}: ${what}`,
  source: titles.sheet1995,
  printed,
  unit: unitOf(quantity, "IP").label,
  tolerance,
  compute: () => inUnit(value(), quantity),
});

type Segment = readonly [
  name: string,
  diameter: number,
  figures: Record<"area" | "velocity" | "velocity pressure" | "friction", string>,
];

const segments: readonly Segment[] = [
  ["A-B", 10, { area: "0.55", velocity: "3302", "velocity pressure": "0.68", friction: "0.94" }],
  ["B-C", 16, { area: "1.40", velocity: "3010", "velocity pressure": "0.56", friction: "0.39" }],
  ["C-D", 18, { area: "1.77", velocity: "3680", "velocity pressure": "0.84", friction: "0.50" }],
  ["J-K", 20, { area: "2.18", velocity: "2981", "velocity pressure": "0.55", friction: "0.15" }],
];

const bySegment = segments.flatMap(([name, diameter, printed]): PublishedRow[] => {
  const of = () => budget.of(name);
  return [
    figure(name, "area", printed.area, "area", HALF_LAST_DIGIT, () => sectionArea(inches(diameter), null)),
    figure(name, "velocity", printed.velocity, "velocity", pi, () => of().velocity),
    figure(
      name,
      "velocity pressure",
      printed["velocity pressure"],
      "pressure",
      HALF_LAST_DIGIT,
      () => of().velocityPressure,
    ),
    figure(name, "friction", printed.friction, "pressure", loeffler, () => of().cost!.friction),
  ];
});

/** The same airflows and diameters through the cell's own words for the sheet's elbow and branch entry. */
const fittings: readonly PublishedRow[] = (
  [
    ["A-B entries", 1800, 10, "branch 45", 1, "0.19"],
    ["B-C entries", 4200, 16, "branch 45", 3, "0.47"],
    ["C-D elbows", 6500, 18, "elbow 1.5", 2, "0.46"],
    ["C-D entries", 6500, 18, "branch 45", 3, "0.71"],
    ["J-K elbow", 6500, 20, "elbow 1.5", 1, "0.15"],
    ["J-K entry", 6500, 20, "branch 45", 1, "0.16"],
  ] as const
).map(([id, airflow, diameter, text, count, printed]) => ({
  id: `GW1 ${id}`,
  what: `exhaust line: loss of ${count} x "${text}", ${airflow} cfm in ${diameter} in`,
  source: titles.sheet1995,
  printed,
  unit: "in.w.g.",
  tolerance: id === "J-K entry" ? pressureUnit : HALF_LAST_DIGIT,
  compute: () => cell(fittingloss, airflow, diameter, text, count),
}));

/** What the sheet calls a segment's loss: friction, elbows and entries, the hood apart. */
const lossOf = (name: string): number => budget.of(name).cost!.friction + budget.of(name).cost!.fittings;

const sums: readonly PublishedRow[] = [
  figure("A-B", "segment loss", "1.13", "pressure", loeffler, () => lossOf("A-B")),
  figure("B-C", "segment loss", "0.87", "pressure", loeffler, () => lossOf("B-C")),
  figure("C-D", "segment loss", "1.67", "pressure", loeffler, () => lossOf("C-D")),
  figure(
    "suction",
    "losses of all segments",
    "3.67",
    "pressure",
    loeffler,
    () => lossOf("A-B") + lossOf("B-C") + lossOf("C-D"),
  ),
  figure("suction", "static suction behind the hood", "1.02", "pressure", HALF_LAST_DIGIT, () => {
    const first = budget.of("A-B");
    return first.cost!.entry + first.velocityPressure;
  }),
  figure(
    "fan",
    "static suction at its inlet",
    "4.69",
    "pressure",
    bookkeeping,
    () => budget.suction + budget.of("C-D").velocityPressure,
  ),
  figure("fan", "static pressure at its outlet", "0.45", "pressure", loeffler, () => budget.dischargeLoss),
  figure("fan", "fan static pressure", "4.30", "pressure", bookkeeping, () => budget.staticPressure),
];

export const exhaustLineRows: PublishedGroup = {
  title: "an exhaust line, segment by segment",
  rows: [...bySegment, ...fittings, ...sums],
};
