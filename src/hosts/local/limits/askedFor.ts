import { type Argument, cellsOf, countOf, heightOf, isMatrix, largest, sum, valueOf, widthOf } from "./sizes";

/** Work that a call asks for beside going over its arguments once, in visits of cells; known before it is done. */
type Asked = (...args: readonly Argument[]) => number;

const LAST_DAY = 2_958_465; // 31 December 9999, which a date typed as a text may be

/** A loop of as many steps as the greatest number, or of days up to a date. */
const countedSteps: Asked = (...args) =>
  largest(args.map((one) => (/\d[-/]\d/.test(String(valueOf(one))) ? LAST_DAY : countOf(one, 0))));

const square: Asked = (...args) => sum(args.map(cellsOf)) ** 2;
const cube: Asked = (...args) => largest(args.flatMap((one) => [widthOf(one), heightOf(one)])) ** 3;

/** Least squares: each pair of columns, or of powers, over every row. */
const regression: Asked = (...args) => sum(args.map(cellsOf)) * largest(args.map(widthOf));
const polynomial =
  (place: number): Asked =>
  (...args) =>
    sum(args.map(cellsOf)) * countOf(args[place], 1) ** 2;

/** A text whose parts are replaced by others. */
const replaced: Asked = (text, _, by) => String(valueOf(text)).length * String(valueOf(by)).length;

/** A pattern with stars tries every place for each of them. */
const matched: Asked = (...args) => {
  const stars = largest(args.map((one) => (isMatrix(one) ? 0 : String(valueOf(one)).split("*").length - 1)));
  if (stars < 2) return 0;
  const lengths = args.flatMap((one) => (isMatrix(one) ? one.flat() : [])).map((cell) => String(cell?.value).length);
  return sum(lengths.map((length) => length ** stars));
};

const DATES = "NETWORKDAYS NETWORKDAYS.INTL WORKDAY WORKDAY.INTL";
const PAYMENTS =
  "COUPDAYBS COUPDAYS COUPDAYSNC COUPNCD COUPNUM COUPPCD CUMIPMT CUMPRINC DB VDB DURATION MDURATION PRICE YIELD";
const PATTERNS =
  "COUNTIF COUNTIFS COUNTUNIQUEIFS SUMIF SUMIFS AVERAGEIF AVERAGEIFS MAXIFS MINIFS MATCH VLOOKUP HLOOKUP XLOOKUP LOOKUP " +
  "DAVERAGE DCOUNT DCOUNTA DGET DMAX DMIN DPRODUCT DSTDEV DSTDEVP DSUM DVAR DVARP";

const each = (names: string, asked: Asked): [string, Asked][] => names.split(" ").map((name) => [name, asked]);

/** Cells that a call makes, by what it is told. INDIRECT's stand where its range is known. */
export const cellsMade: ReadonlyMap<string, Asked> = new Map<string, Asked>([
  ["SEQUENCE", (rows, columns) => countOf(rows, 1) * countOf(columns, 1)],
  ["RANDARRAY", (rows, columns) => countOf(rows, 1) * countOf(columns, 1)],
  ["MUNIT", (size) => countOf(size, 1) ** 2],
  ["EXPAND", (array, rows, columns) => countOf(rows, heightOf(array)) * countOf(columns, widthOf(array))],
  ["WRAPROWS", (range, count) => cellsOf(range) + countOf(count, 1)],
  ["WRAPCOLS", (range, count) => cellsOf(range) + countOf(count, 1)],
  ["CHOOSEROWS", (array, ...rows) => widthOf(array) * sum(rows.map((one) => Math.max(1, cellsOf(one))))],
  ["CHOOSECOLS", (array, ...columns) => heightOf(array) * sum(columns.map((one) => Math.max(1, cellsOf(one))))],
  ["OFFSET", (cell, _, __, height, width) => countOf(height, heightOf(cell)) * countOf(width, widthOf(cell))],
]);

/** Steps of functions that may work long on little. */
export const stepsTaken: ReadonlyMap<string, Asked> = new Map<string, Asked>([
  ["MMULT", (one, other) => heightOf(one) * widthOf(one) * widthOf(other)],
  ["FREQUENCY", (data, classes) => cellsOf(data) + cellsOf(classes) ** 2],
  ["SUBSTITUTE", replaced],
  ["SORTN", square],
  ...each("LARGE SMALL", (data, place) => cellsOf(data) * Math.min(cellsOf(data), countOf(place, 1)) ** 0.5),
  ...each("MDETERM MINVERSE", cube),
  ...each("LINEST LOGEST TREND GROWTH", regression),
  ["POLYFIT.COEFFS", polynomial(2)],
  ["POLYFIT.FORECAST", polynomial(3)],
  ...each("IRR XIRR", (...args) => 100 * sum(args.map(cellsOf))),
  ...each(`${DATES} ${PAYMENTS}`, countedSteps),
  ...each(PATTERNS, matched),
  ...each("REGEXTEST REGEXEXTRACT REGEXREPLACE", () => Infinity), // nobody can tell how long a pattern searches
]);

const NETWORK = 150; // visits of cells that a cell of a table of runs takes, measured
const GAINS = 15; // the same for each of its rows, since each gate is solved for
const SIZES = 2e7; // its search stops after so many runs solved, whatever it is given; about a second
const TOGETHER = 15 * 500; // the same for as many sets of gates as it ever solves

/** What one of our own functions takes. */
export function ourWork(name: string, args: readonly Argument[]): number {
  const cells = sum(args.map(cellsOf));
  if (/\.(?:BUDGET|SOLVE|SCENARIOS|CLAIM|OPERATINGPOINT)$/.test(name)) return NETWORK * cells;
  if (/\.(?:GAINS|LEAKGAINS)$/.test(name)) return GAINS * cells * largest(args.map(heightOf));
  if (name.endsWith(".SIZES")) return SIZES;
  if (name.endsWith(".TOGETHER")) return TOGETHER * cells;
  return 100 * largest(args.map(heightOf)) * largest(args.map(widthOf));
}
