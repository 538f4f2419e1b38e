import { correctedReading } from "../../core/measuring/correctedReading";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { ABOVE_ZERO, FROM_ZERO, needed, withoutUnits } from "../signature";

export const takes = withoutUnits({
  reading: needed("ratio", FROM_ZERO),
  areaentered: needed("ratio", ABOVE_ZERO),
  areatrue: needed("ratio", ABOVE_ZERO),
});

/**
 * What a meter should have shown, had the right area been entered, in the reading's own unit (cfm or m³/h).
 * @customfunction CORRECTEDREADING
 * @param reading Airflow as the meter showed it, any unit, at least 0
 * @param areaentered Area that was entered in the meter, any unit, above 0
 * @param areatrue Area where the probe stood, in the same unit, above 0 (a vane over a slot: its own face)
 * @returns airflow
 */
export function correctedreading(reading: unknown[][], areaentered: unknown[][], areatrue: unknown[][]): unknown[][] {
  return answerOf(takes, [reading, areaentered, areatrue], ({ reading, areaentered, areatrue }) =>
    correctedReading(reading, areaentered, areatrue),
  );
}

export const guide: Guide = {
  maths: "Q = reading × true area / entered area",
  source: "commonPractice",
  basis: "common practice",
  limits: "For meters that multiply by an area. A vane over a slot reads its own face.",
  cautions: ["area in the meter", "vane over a slot"],
  also: ["anemometer", "vane meter", "wrong area"],
  example: {
    asks: "980 cfm shown with the 0.196 ft² of a 6 in duct for the 0.136 ft² of a 5 in one",
    args: ["980", "0.196", "0.136"],
  },
};

export const formula: Formula = {
  tex: ["Q_\\text{true} = Q_\\text{shown}\\,\\frac{A_\\text{true}}{A_\\text{entered}}"],
  letters: { "A_\\text{true}": "area where the probe stood", "A_\\text{entered}": "area that the meter was given" },
};
