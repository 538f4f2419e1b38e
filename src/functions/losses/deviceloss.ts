import { DEVICE_EXPONENT_LIMITS, deviceLoss, SEPARATOR_EXPONENT } from "../../core/devices/deviceLoss";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { ABOVE_ZERO, FROM_ZERO, needed, optional, withoutUnits } from "../signature";

export const takes = withoutUnits({
  airflow: needed("ratio", FROM_ZERO),
  ratedloss: needed("ratio", FROM_ZERO),
  ratedairflow: needed("ratio", ABOVE_ZERO),
  exponent: optional("ratio", DEVICE_EXPONENT_LIMITS, SEPARATOR_EXPONENT),
});

/**
 * Loss of a separator or filter at another airflow than rated, in the rated loss's unit (in.w.g. or Pa).
 * @customfunction DEVICELOSS
 * @param airflow Airflow, any unit, at least 0
 * @param ratedloss Its loss at the rated airflow, in.w.g. or Pa, at least 0
 * @param ratedairflow The rated airflow, in the airflow's unit, above 0
 * @param [exponent] 2 for a separator (default), 1 for a filter medium; 0.5 to 2.5
 * @returns loss
 */
export function deviceloss(
  airflow: unknown[][],
  ratedloss: unknown[][],
  ratedairflow: unknown[][],
  exponent?: unknown[][],
): unknown[][] {
  return answerOf(
    takes,
    [airflow, ratedloss, ratedairflow, exponent],
    ({ airflow, ratedloss, ratedairflow, exponent }) => deviceLoss(airflow, ratedloss, ratedairflow, exponent),
  );
}

export const guide: Guide = {
  maths: "Δp = Δp rated (Q / Q rated)ⁿ, n = 2 for a separator, 1 for a filter",
  source: "commonPractice",
  basis: "common practice",
  limits: "A filter's loss grows as it loads: clean and dirty are two ratings.",
  cautions: ["emptying bags", "smouldering bin"],
  also: ["cyclone", "pressure drop", "pressure loss", "separator", "filter bag", "cartridge"],
  example: { asks: "A separator of 2 in.w.g. at 800 cfm, now at 600 cfm", args: ["600", "2", "800"] },
};

export const formula: Formula = {
  tex: ["\\Delta p = \\Delta p_0\\left(\\frac{Q}{Q_0}\\right)^m"],
  letters: {
    "\\Delta p_0": "loss at the rated airflow",
    Q_0: "rated airflow",
    Q: "airflow",
    m: "2 for a separator, 1 for a filter medium",
  },
};
