import { density } from "../../../src/functions/duct/density";
import { convertunit } from "../../../src/functions/duct/convertunit";
import { cell } from "../cell";
import { HALF_LAST_DIGIT, type Margin, type PublishedGroup, type PublishedRow } from "../row";
import { titles } from "./titles";

const ABSOLUTE_ZERO = -273.15; // °C
const DRY_AIR = 287.042; // J/(kg K), ASHRAE Handbook Fundamentals 2017, chapter 1

/** ASHRAE's altitude is geopotential; the 1976 tables go by height above the sea: h = R z / (R + z). */
const geopotential = (height: number): number => (6_356_766 * height) / (6_356_766 + height);

const fit: Margin = {
  relative: 0.00005,
  why: "Temperature printed to 0.01 K, and ASHRAE's pressure formula is a fit to that atmosphere.",
};

const atmosphere: readonly PublishedRow[] = (
  [
    ["D02", 288.15, 0, "1.225"],
    ["D04", 262.17, 4000, "0.81935"],
  ] as const
).map(([id, kelvin, height, printed]) => ({
  id,
  what: `density of the standard atmosphere at ${height} m, ${kelvin} K`,
  source: titles.standardAtmosphere,
  printed,
  unit: "kg/m³",
  tolerance: id === "D04" ? fit : HALF_LAST_DIGIT,
  compute: () => cell(density, kelvin + ABSOLUTE_ZERO, geopotential(height), 0, "SI"),
}));

const quoted: Margin = { relative: 0.001, why: "The margin that those tests state themselves." };

const dryAir: readonly PublishedRow[] = [
  {
    id: "D05",
    what: "density of dry air, 77 °F, 14.696 psia (printed as 13.5251 ft³/lb)",
    source: titles.psychrolib,
    printed: "0.073936",
    unit: "lb/ft³",
    tolerance: quoted,
    compute: () => cell(density, 77, 0, 0),
  },
  {
    id: "D08",
    what: "density of dry air, 25 °C, 101325 Pa (printed as 0.8443 m³/kg)",
    source: titles.psychrolib,
    printed: "1.18441",
    unit: "kg/m³",
    tolerance: quoted,
    compute: () => cell(density, 25, 0, 0, "SI"),
  },
];

/** The sources print volume per weight of dry air: (1 + W) / density, W the humidity ratio. */
const moistAir: readonly PublishedRow[] = [
  {
    id: "D07",
    what: "volume of moist air, 100 °F, relative humidity 0.13, humidity ratio 0.00523, sea level",
    source: titles.psychrolib,
    printed: "14.22",
    unit: "ft³/lb of dry air",
    tolerance: { relative: 0.0003, why: "ASHRAE's example reads its answers off the psychrometric chart." },
    compute: () => (1 + 0.00523) / cell(density, 100, 0, 0.13),
  },
  {
    id: "D10",
    what: "volume of moist air, 40 °C, humidity ratio 0.0065, sea level",
    source: titles.psychrolib,
    printed: "0.896",
    unit: "m³/kg of dry air",
    tolerance: HALF_LAST_DIGIT,
    compute: () => {
      // p_w = W p / (0.621945 + W); saturation at 40 °C is 7384.9 Pa (ASHRAE table, from memory).
      const humidity = (0.0065 * 101325) / (0.621945 + 0.0065) / 7384.9;
      return (1 + 0.0065) / cell(density, 40, 0, humidity, "SI");
    },
  },
];

/** Standard pressure by altitude, from the density of dry air: p = rho R T. */
const pressureAt = (altitude: number): number => cell(density, 20, altitude, 0, "SI") * DRY_AIR * (20 - ABSOLUTE_ZERO);

const pressures: readonly PublishedRow[] = [
  ...(
    [
      ["D11", -500, "107478"],
      ["D13", 500, "95461"],
      ["D14", 1000, "89875"],
      ["D16", 10000, "26436"],
    ] as const
  ).map(([id, altitude, printed]): PublishedRow => ({
    id,
    what: `standard pressure at ${altitude} m, by the density of dry air`,
    source: titles.psychrolib,
    printed,
    unit: "Pa",
    tolerance: HALF_LAST_DIGIT,
    compute: () => pressureAt(altitude),
  })),
  ...(
    [
      ["D17", -1000, "15.236"],
      ["D19", 1000, "14.175"],
      ["D20", 3000, "13.173"],
    ] as const
  ).map(([id, altitude, printed]): PublishedRow => ({
    id,
    what: `standard pressure at ${altitude} ft, by the density of dry air`,
    source: titles.psychrolib,
    printed,
    unit: "psia",
    tolerance: { relative: 0.0002, why: "ASHRAE's psia column lies up to 0.0025 over the equation printed beside it." },
    compute: () => cell(convertunit, pressureAt(altitude * 0.3048), "Pa", "psi"),
  })),
];

/** The table's 1.0 is air of 70 °F at sea level, whatever its density. */
const factor = (fahrenheit: number, feet: number): number =>
  cell(density, fahrenheit, feet, 0) / cell(density, 70, 0, 0);

/** Rows where the table is off by one in its last digit. */
const slips: Readonly<Record<string, Margin>> = {
  D26: { absolute: 0.0005, why: "The table multiplies the rounded 0.964 and 0.946." },
  D35: { absolute: 0.0005, why: "The table's own 0.864 x 0.946 is 0.817." },
  D49: {
    absolute: 0.0005,
    why: "The standard pressure there is 0.7148 of that at sea level; the table cuts it to 0.714.",
  },
};

const roundedStandard: Margin = {
  relative: 0.0015,
  why: "The source takes 0.075 lb/ft³ at sea level; dry air of 70 °F has 0.0749 there.",
};

const factors: readonly PublishedRow[] = (
  [
    ["D22", 70, 0, "1.0"],
    ["D23", 100, 0, "0.946"],
    ["D25", 70, 1000, "0.964"],
    ["D26", 100, 1000, "0.912"],
    ["D28", 70, 2000, "0.93"],
    ["D29", 100, 2000, "0.88"],
    ["D31", 70, 3000, "0.896"],
    ["D32", 100, 3000, "0.848"],
    ["D34", 70, 4000, "0.864"],
    ["D35", 100, 4000, "0.818"],
    ["D37", 70, 5000, "0.832"],
    ["D38", 100, 5000, "0.787"],
    ["D40", 70, 6000, "0.801"],
    ["D41", 100, 6000, "0.758"],
    ["D43", 70, 7000, "0.772"],
    ["D44", 100, 7000, "0.73"],
    ["D46", 70, 8000, "0.743"],
    ["D47", 100, 8000, "0.703"],
    ["D49", 70, 9000, "0.714"],
    ["D50", 100, 9000, "0.676"],
    ["D52", 70, 10000, "0.688"],
    ["D53", 100, 10000, "0.651"],
  ] as const
).map(([id, fahrenheit, feet, printed]) => ({
  id,
  what: `density factor at ${fahrenheit} °F, ${feet} ft`,
  source: titles.fanBasics,
  printed,
  unit: "",
  tolerance: slips[id] ?? HALF_LAST_DIGIT,
  compute: () => factor(fahrenheit, feet),
}));

const designGuide: readonly PublishedRow[] = (
  [
    ["D55", 5900, "0.0603"],
    ["D56", 6500, "0.059"],
    ["D58", 8000, "0.0557"],
    ["D59", 8700, "0.0542"],
  ] as const
).map(([id, feet, printed]) => ({
  id,
  what: `density at ${feet} ft (70 °F assumed)`,
  source: titles.designGuide,
  printed,
  unit: "lb/ft³",
  tolerance: roundedStandard,
  compute: () => cell(density, 70, feet, 0),
}));

const equation: PublishedRow = {
  id: "D62",
  what: "density at 100 °F and 29.92 inHg by 0.075 (530 / (F + 460)), worked out by hand",
  source: titles.altitudeNote,
  printed: "0.07098",
  unit: "lb/ft³",
  tolerance: roundedStandard,
  compute: () => cell(density, 100, 0, 0),
};

export const densityRows: PublishedGroup = {
  title: "density of air",
  rows: [...atmosphere, ...dryAir, ...moistAir, ...pressures, ...factors, ...designGuide, equation],
};
