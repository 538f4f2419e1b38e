import { tradeSize } from "../../core/section/tradeSize";
import { stockDiameters } from "../../reference/tradeSizes";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { WIDTH } from "../letters";
import { ABOVE_ZERO, needed, signature, word } from "../signature";

export const takes = signature(
  { diameter: needed("diameter", ABOVE_ZERO), rounding: word("down", "up", "nearest") },
  "diameter",
);

/**
 * Stock duct diameter beside a wanted one, in inches (SI: mm, the EN 1506 series).
 * @customfunction TRADESIZE
 * @param diameter Wanted diameter, in (SI: mm), above 0
 * @param [rounding] "down" (default, the smaller and faster pipe), "up" or "nearest"
 * @param [units] "IP" (default) or "SI"
 * @returns diameter
 */
export function tradesize(diameter: unknown[][], rounding?: unknown[][], units?: unknown[][]): unknown[][] {
  return answerOf(takes, [diameter, rounding, units], ({ diameter, rounding }, system) =>
    tradeSize(diameter, rounding, stockDiameters(system)),
  );
}

export const guide: Guide = {
  maths: "The next size of the series: down, up or the nearest",
  source: "commonPractice",
  basis: "common practice",
  limits: "Down is the default, since a duct that is too wide lets its dust settle. Not every stock has every size.",
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
