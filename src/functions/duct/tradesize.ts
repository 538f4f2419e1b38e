import { type Rounding, tradeSize } from "../../core/section/tradeSize";
import { NAMED_SERIES, type NamedSeries, stockSizes } from "../../reference/tradeSizes";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { WIDTH } from "../letters";
import { ABOVE_ZERO, needed, signature, word } from "../signature";

const ROUNDINGS = ["down", "up", "nearest"] as const satisfies readonly Rounding[];

/** A way of rounding alone goes by the series of the units, with a series behind it by that one. */
type Way = Rounding | `${Rounding} ${NamedSeries}`;

const WAYS: readonly Way[] = [
  ...ROUNDINGS,
  ...NAMED_SERIES.flatMap((series) => ROUNDINGS.map((rounding): Way => `${rounding} ${series}`)),
];

export const takes = signature({ diameter: needed("diameter", ABOVE_ZERO), rounding: word(...WAYS) }, "diameter");

/**
 * How to round, and the series that is named; null where it is the one of the units.
 *
 * @source house
 */
export function readWay(way: Way): { readonly rounding: Rounding; readonly series: NamedSeries | null } {
  const rounding = ROUNDINGS.find((word) => way.startsWith(word))!;
  return { rounding, series: NAMED_SERIES.find((name) => way.endsWith(name)) ?? null };
}

/**
 * Stock duct diameter beside a wanted one, in inches (SI: mm, the EN 1506 series, or "metric stock").
 * @customfunction TRADESIZE
 * @param diameter Wanted diameter, in (SI: mm), above 0
 * @param [rounding] "down" (default, the faster pipe), "up" or "nearest"; "metric stock" or "drain pipe" behind it
 * @param [units] "IP" (default) or "SI"
 * @returns diameter
 */
export function tradesize(diameter: unknown[][], rounding?: unknown[][], units?: unknown[][]): unknown[][] {
  const answer = answerOf(takes, [diameter, rounding, units], ({ diameter, rounding: way }, system) => {
    const { rounding, series } = readWay(way);
    const sizes = stockSizes(system, series).map((size) => size.diameter);
    return tradeSize(diameter, rounding, sizes);
  });
  return answer.map((line) => line.map((size) => (typeof size === "number" ? asNamed(size) : size)));
}

/** 6 in is 6, as a list of prices has it: by way of metres it comes back as 5.999999999999999, and a look-up takes the size below. */
const asNamed = (size: number): number => Number(size.toPrecision(12));

export const guide: Guide = {
  maths: "The next size of the series: down, up or the nearest",
  source: "commonPractice",
  basis: "common practice",
  limits:
    "Down is the default, since a duct that is too wide lets its dust settle. Not every stock has every size. Without a series it is inches, or in SI the first choice of EN 1506; `down metric stock` takes what workshops find on the shelf (140, 180 ... mm), `down drain pipe` the least inside diameters of sewer and drain pipe.",
  also: ["duct size", "pipe size", "standard size"],
  example: { asks: "Stock size below 4.28 in", args: ["4.28"] },
};

export const formula: Formula = {
  tex: ["D_\\text{stock} = \\max\\{\\,d \\in \\text{sizes} : d \\le D\\,\\}"],
  letters: {
    D: WIDTH,
    d: "a size from the table of sizes; “up” takes the smallest that is not smaller, “nearest” the nearer one",
  },
};
