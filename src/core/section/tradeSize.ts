import { NoAnswerError, requireWithin } from "../errors";

export type Rounding = "down" | "up" | "nearest";

/**
 * The stock diameter at or beside a wanted one.
 *
 * Rounding down keeps the dust moving: the smaller pipe is the faster one.
 *
 * @param diameter [m] above 0
 * @param rounding "down", "up" or "nearest" (of two equally near ones the smaller)
 * @param sizes [m] the stock series, rising
 * @returns [m]
 * @throws DomainError if the diameter is not above 0
 * @throws NoAnswerError if the series has no size on that side
 * @source commonPractice inch sizes; EN 1506 for the metric series
 * @example tradeSize(0.11, "down", [0.1, 0.125]) // => 0.1
 * @example tradeSize(0.11, "up", [0.1, 0.125]) // => 0.125
 */
export function tradeSize(diameter: number, rounding: Rounding, sizes: readonly number[]): number {
  requireWithin("diameter", diameter, { above: 0 }, "m");
  const slack = 1e-9 * diameter; // 4 in typed as 101.6 mm is still 4 in
  const below = sizes.filter((size) => size <= diameter + slack).at(-1);
  const above = sizes.find((size) => size >= diameter - slack);
  const pick = rounding === "down" ? below : rounding === "up" ? above : nearer(diameter, below, above);
  if (pick === undefined) {
    const side = rounding === "up" ? "as large as that" : "as small as that";
    throw new NoAnswerError(`no stock size is ${side}`);
  }
  return pick;
}

function nearer(diameter: number, below: number | undefined, above: number | undefined): number | undefined {
  if (below === undefined || above === undefined) return below ?? above;
  return diameter - below <= above - diameter + 1e-9 * diameter ? below : above; // a tie up to rounding
}
