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

/** Stock diameters, each series from small to large. */
export const tradeSizes: readonly TradeSizeRow[] = [...INCH_SIZES.map(inch), ...EN_SIZES.map(en)];

/** [m] the stock diameters that go with a unit system: whole and half inches, or the first choice of EN 1506. */
export const stockDiameters = (system: UnitSystem): readonly number[] =>
  tradeSizes
    .filter(({ series, additional }) => !additional && (series === "inch") === (system === "IP"))
    .map(({ diameter }) => diameter);
