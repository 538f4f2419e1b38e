import { airpower } from "../../../src/functions/fan/airpower";
import { fanlaw } from "../../../src/functions/fan/fanlaw";
import { fanpressure } from "../../../src/functions/fan/fanpressure";
import { operatingpoint } from "../../../src/functions/fan/operatingpoint";
import { solve } from "../../../src/functions/systems/solve";
import { cfm, inches, inchesOfWater } from "../../../src/reference/asPrinted";
import { fromSI, unitOf } from "../../../src/reference/quantities";
import { budgetOf, makeRun } from "../../support/runs";
import { cell } from "../cell";
import { EXACTLY, HALF_LAST_DIGIT, type Margin, type PublishedGroup, type PublishedRow } from "../row";
import { inchOfWater } from "./margins";
import { titles } from "./titles";

type Point = readonly [airflow: number, pressure: number];

/** One point of a fan at other speed, air and size, by FANLAW. */
const moved = (point: Point, speed: number, density = 1, size = 1): Point =>
  fanlaw([[...point]], [[speed]], [[density]], [[size]])[0] as unknown as Point;

/** By what factor the power grows: AIRPOWER of the moved point over AIRPOWER of the point. */
const powerRatio = (speed: number, density = 1, size = 1): number =>
  cell(airpower, ...moved([1000, 2], speed, density, size)) / cell(airpower, 1000, 2);

interface Example {
  readonly id: string;
  readonly what: string;
  readonly source: string;
  readonly given: readonly [...Point, power: number];
  readonly units: readonly [string, string, string];
  readonly speed: number; // new speed / old speed
  readonly printed: readonly [string, string, string];
}

const examples: readonly Example[] = [
  {
    id: "N01",
    what: "12 200 acfm, 5 in.w.g., 9.25 hp at 1694 rpm, now 2100 rpm",
    source: `${titles.abulencia}, Ex 17.2`,
    given: [12_200, 5, 9.25],
    units: ["acfm", "in.w.g.", "bhp"],
    speed: 2100 / 1694,
    printed: ["15123.97", "7.68", "17.62"],
  },
  {
    id: "N04",
    what: "6000 cfm, 4 in.w.g., 6 hp at 2000 rpm, now 1500 rpm",
    source: titles.fanHomework,
    given: [6000, 4, 6],
    units: ["cfm", "in.w.g.", "hp"],
    speed: 1500 / 2000,
    printed: ["4500", "2.25", "2.53"],
  },
  {
    id: "N05",
    what: "2000 cfm, 3.00 in.w.g., 1.0 kW at 1300 rpm, now 1500 rpm",
    source: titles.fanHomework,
    given: [2000, 3, 1],
    units: ["cfm", "in.w.g.", "kW"],
    speed: 1500 / 1300,
    printed: ["2308", "3.99", "1.54"],
  },
];

const bySpeed = examples.flatMap(({ id, what, source, given, units, speed, printed }): PublishedRow[] => {
  const [airflow, pressure, power] = given;
  const figures: readonly (() => number)[] = [
    () => moved([airflow, pressure], speed)[0],
    () => moved([airflow, pressure], speed)[1],
    () => power * powerRatio(speed),
  ];
  return figures.map((compute, place) => ({
    id: `${id} ${["airflow", "pressure", "power"][place]!}`,
    what: `${what}: ${["airflow", "pressure", "power"][place]!}`,
    source,
    printed: printed[place]!,
    unit: units[place]!,
    tolerance: HALF_LAST_DIGIT,
    compute,
  }));
});

/** Number by number: id, what, source, printed, unit, value. Each agrees to half its last digit. */
const singleLaws: readonly (readonly [string, string, string, string, string, () => number])[] = [
  [
    "N02",
    "47.5 bhp with 46 in at 1575 rpm, now 42 in at 1625 rpm",
    `${titles.abulencia}, Ex 17.1`,
    "33.1",
    "bhp",
    () => 47.5 * powerRatio(1625 / 1575, 1, 42 / 46),
  ],
  [
    "GN01",
    "speed at which a fan that moves 1000 acfm at 850 rpm moves 1200 acfm",
    titles.apti,
    "1020",
    "rpm",
    () => (1200 / moved([1000, 1], 2)[0]) * 2 * 850, // what it moves at twice the speed, in proportion
  ],
  ["GN02", "400 cfm at 1000 rpm, now 3000 rpm", titles.exam, "1200", "cfm", () => moved([400, 1], 3)[0]],
  ["GN03", "5 in.w.g. at 1000 rpm, now 3000 rpm", titles.exam, "45", "in.w.g.", () => moved([1, 5], 3)[1]],
  ["GN04", "20 hp, diameter doubled at the same speed", titles.exam, "640", "hp", () => 20 * powerRatio(1, 1, 2)],
  [
    "N07 pressure to look for",
    "7500 cfm at 1.5 in.w.g. in air of density factor 0.643 (6000 ft, 200 °F): pressure to look for on a standard curve",
    titles.fanBasics,
    "2.33",
    "in.w.g.",
    () => moved([7500, 1.5], 1, 1 / 0.643)[1],
  ],
  [
    "N07 pressure delivered",
    "what a fan with 2.33 in.w.g. at 7500 cfm on its standard curve gives in air of density factor 0.643",
    titles.fanBasics,
    "1.5",
    "in.w.g.",
    () => {
      const standard = [[5000, 2.8], [7500, 2.33], [9000, 1.7]]; // prettier-ignore
      return fanpressure(fanlaw(standard, [[1]], [[0.643]]), [[7500]])[0]![0] as number;
    },
  ],
  [
    "N07 power",
    "shaft power of 3.53 bhp on the standard curve, in air of density factor 0.643",
    titles.fanBasics,
    "2.27",
    "bhp",
    () => 3.53 * powerRatio(1, 0.643),
  ],
  [
    "GN05",
    "fan static pressure with -4.69 in.w.g. static at the inlet of 18 in, 6500 cfm, and 0.45 at the outlet",
    titles.sheet1995,
    "4.3",
    "in.w.g.",
    () => fromSI(fanOfExhaustLine(), unitOf("pressure", "IP")),
  ],
];

/** A line with 4.69 in.w.g. of static suction at its end, so that much less its velocity pressure of total suction, and 0.45 after the fan. */
function fanOfExhaustLine(): number {
  const air = { density: 1.2014, hoseRoughness: 0, plainEnd: 0 }; // standard air
  const costs = (inchesOf: number) => ({ ratedLoss: inchesOfWater(inchesOf), ratedAirflow: cfm(6500), exponent: 2 });
  const end = { diameter: inches(18), wantedAirflow: cfm(6500) };
  const out = makeRun("out", "", { side: "discharge", diameter: inches(20), device: costs(0.45) });
  const suctionFor = (loss: number) => budgetOf([makeRun("in", "fan", { ...end, device: costs(loss) }), out], air);
  const { velocityPressure } = suctionFor(4.69).of("in");
  return suctionFor(4.69 - velocityPressure / inchesOfWater(1)).staticPressure;
}

const airPower: PublishedRow = {
  id: "N08",
  what: "power in 25 862 cfm at a total pressure of 3.5 in of water",
  source: `${titles.solberg}, Ex 10.3`,
  printed: "14.263",
  unit: "hp",
  tolerance: inchOfWater,
  compute: () => cell(airpower, 25_862, 3.5),
};

/*
 * W1: the hood, damper, elbows and duct of wholeSystems.ts with the book's fan. Its air is 1.184 kg/m3, and the fan's curve is
 * meant for that air, so for SOLVE, which takes curves at standard density, it is first brought there by FANLAW.
 */
const fan: number[][] = [[0, 0.9], [250, 0.95], [500, 0.9], [750, 0.75], [1000, 0.4], [1200, 0]]; // prettier-ignore

const graph: Margin = {
  relative: 0.01,
  why: "The book reads the crossing of two curves off a graph, and its fan curve is smooth through six points.",
};

const AIR = 1.184 / 16.01846337; // lb/ft3
const duct = [
  ["Run", "To", "Diameter", "Length", "Material", "Hood", "K"],
  ["duct", "fan", 9.06, 44, 0.15 / 25.4, 1.3, 1.8 + 5 * 0.21 + 1.05], // the exit's kinetic factor, 1.05, is one of the K
];

const solved = (column: number): number =>
  solve(duct, fanlaw(fan, [[1]], [[0.075 / AIR]]), undefined, [[AIR]]).at(-1)![column] as number;

const met = (column: number): number => operatingpoint(fan, [[600]], [[0.709]])[0]![column] as number;

const operatingPoint: readonly PublishedRow[] = (
  [
    ["N11 airflow, SOLVE", "what flows, by SOLVE over its run", "650", "cfm", () => solved(1)],
    ["N11 pressure, SOLVE", "fan pressure, by SOLVE over its run", "0.83", "in H2O", () => solved(3)],
    ["N11 airflow, OPERATINGPOINT", "what flows, from 0.709 in at 600 cfm", "650", "cfm", () => met(0)],
    ["N11 pressure, OPERATINGPOINT", "fan pressure, from 0.709 in at 600 cfm", "0.83", "in H2O", () => met(1)],
  ] as const
).map(([id, what, printed, unit, compute]) => ({
  id,
  what: `hood, duct and fan: ${what}`,
  source: `${titles.cengel}, Ex 14-1`,
  printed,
  unit,
  tolerance: graph,
  compute,
}));

const onCurve: PublishedRow = {
  id: "N10",
  what: "fan curve through 0.90 in at 0, 0.95 at 250, 0.90 at 500, 0.75 at 750, 0.40 at 1000 and 0 at 1200 cfm, at 750 cfm",
  source: `${titles.cengel}, Table 14-1`,
  printed: "0.75",
  unit: "in H2O",
  tolerance: EXACTLY,
  compute: () => fanpressure(fan, [[750]])[0]![0] as number,
};

export const fanRows: PublishedGroup = {
  title: "fans, fan laws and an operating point",
  rows: [
    ...bySpeed,
    ...singleLaws.map(([id, what, source, printed, unit, compute]): PublishedRow => ({
      ...{ id, what, source, printed, unit, compute },
      tolerance: HALF_LAST_DIGIT,
    })),
    airPower,
    onCurve,
    ...operatingPoint,
  ],
};
