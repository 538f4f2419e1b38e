import { inches, millimetres } from "./asPrinted";
import type { UnitSystem } from "./quantities";
import type { TradeSizeRow } from "./schema";

const INCH_SIZES = [
  2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 40, 44,
  48,
];
const EN_SIZES = [
  63, 80, 100, 125, 150, 160, 200, 250, 300, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900, 1000, 1120, 1250,
];
const EN_ADDITIONAL = [150, 300, 355, 450, 560, 710, 900, 1120]; // the standard's second choice

const inch = (size: number): TradeSizeRow => ({
  key: `${size} in`,
  label: `Round duct, ${size} in`,
  series: "inch",
  additional: false,
  diameter: inches(size),
  source: "commonPractice",
  locator: "stock sizes of round duct and fittings",
  basis: "common practice",
  checked: null,
});

const en = (size: number): TradeSizeRow => ({
  key: `${size} mm`,
  label: `Round duct, ${size} mm`,
  series: "EN 1506",
  additional: EN_ADDITIONAL.includes(size),
  diameter: millimetres(size),
  ...(EN_ADDITIONAL.includes(size) ? { note: "Additional size of the standard, not in every stock." } : {}),
  source: "en1506Memory",
  locator: "nominal diameters",
  basis: "from memory",
  checked: null,
});

/** What workshops in metric countries find on the shelf, sizes of EN 1506 and those between. */
const METRIC_STOCK = [
  60, 80, 100, 110, 120, 125, 140, 150, 160, 175, 180, 200, 225, 250, 280, 300, 315, 350, 400, 450, 500,
];

const metric = (size: number): TradeSizeRow => ({
  key: `${size} mm stock`,
  label: `Duct, hose or fitting of ${size} mm, as dust-extraction stock has it`,
  series: "metric stock",
  additional: false,
  diameter: millimetres(size),
  source: "commonPractice",
  locator: "stock sizes of dust-extraction duct and hose",
  basis: "common practice",
  checked: null,
});

/** Sewer and drain pipe: nominal inches and the least inside diameter that the standard lets it have. */
const DRAIN_SIZES: readonly (readonly [nominal: number, inside: number])[] = [
  [2, 50.8],
  [3, 73.02],
  [4, 98.42],
  [5, 123.82],
  [6, 149.22],
];

const drain = ([nominal, inside]: (typeof DRAIN_SIZES)[number]): TradeSizeRow => ({
  key: `${nominal} in drain pipe`,
  label: `Sewer and drain pipe of ${nominal} in: least inside diameter`,
  series: "drain pipe",
  additional: false,
  diameter: millimetres(inside),
  note: "Its outside is wider than duct of the same name. Snap-lock and spiral pipe and hose carry their inside diameter as their name.",
  source: "astmD2729",
  locator: "table of sockets and inside diameters",
  basis: "second-hand",
  checked: "2026-11-28",
});

/** Stock diameters, each series from small to large. */
export const tradeSizes: readonly TradeSizeRow[] = [
  ...INCH_SIZES.map(inch),
  ...EN_SIZES.map(en),
  ...METRIC_STOCK.map(metric),
  ...DRAIN_SIZES.map(drain),
];

/** The series that a size may be asked of by name, beside the one that goes with the units. */
export const NAMED_SERIES = ["metric stock", "drain pipe"] as const;
export type NamedSeries = (typeof NAMED_SERIES)[number];

/**
 * Stock sizes of a series by name or, where none is named, of the one that goes with a unit system: whole and half inches, or
 * the first choice of EN 1506.
 */
export const stockSizes = (system: UnitSystem, named: NamedSeries | null): readonly TradeSizeRow[] => {
  const wanted = named ?? (system === "IP" ? "inch" : "EN 1506");
  return tradeSizes.filter(({ series, additional }) => !additional && series === wanted);
};

/** [m] the diameters of the series that goes with a unit system. */
export const stockDiameters = (system: UnitSystem): readonly number[] =>
  stockSizes(system, null).map(({ diameter }) => diameter);
