import { convertUnit } from "../../core/convertUnit";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { ANY_NUMBER, needed, UNIT_NAME, withoutUnits } from "../signature";

export const takes = withoutUnits({ value: needed("ratio", ANY_NUMBER), from: UNIT_NAME, to: UNIT_NAME });

/**
 * A value in another unit of airflow, velocity, pressure, length, area, density or power, such as "cfm" to "m³/h".
 * @customfunction CONVERTUNIT
 * @param value Number in the first unit
 * @param from Unit it is in, such as "cfm", "m³/h", "fpm", "in.w.g.", "Pa", "hp"
 * @param to Unit wanted, of the same kind
 * @returns value
 */
export function convertunit(value: unknown[][], from: unknown[][], to: unknown[][]): unknown[][] {
  return answerOf(takes, [value, from, to], ({ value, from, to }) => convertUnit(value, from, to));
}

export const guide: Guide = {
  maths: "value × unit / unit, by their definitions",
  source: "nistSp811",
  basis: "second-hand",
  limits: "Units of one kind only. in.w.g. is the inch of water at 60 °F.",
  also: ["conversion", "inches of water", "metric"],
  example: { asks: "1000 cfm in m³/h", args: ["1000", "cfm", "m³/h"] },
};

export const formula: Formula = {
  tex: ["y = x\\,\\frac{k_\\text{from}}{k_\\text{to}}"],
  letters: { k: "SI value of one of the unit, in the table of units" },
};
