import { NoAnswerError } from "../../core/errors";
import { sectionArea } from "../../core/section/section";
import { tradeSize } from "../../core/section/tradeSize";
import { inWords } from "../../reference/inWords";
import type { UnitSystem } from "../../reference/quantities";
import { stockDiameters } from "../../reference/tradeSizes";
import { inGroups } from "./inGroups";

/**
 * The widest stock size in which this air carries its dust, with the velocity there, as a sentence; "" where no size is small enough.
 * A narrower pipe passes less air, so the sentence says that it is meant for the air there is.
 *
 * @param airflow [m3/s] above 0
 * @param needed [m/s] of the dust
 */
export function sizeThatCarries(airflow: number, needed: number, system: UnitSystem): string {
  const size = narrowerStock(Math.sqrt((4 * airflow) / (Math.PI * needed)), system);
  if (size === null) return "";
  const velocity = inGroups(airflow / sectionArea(size, null), "velocity", system);
  return ` This much air would carry it in ${inWords(size, "diameter", system)}, at ${velocity}.`;
}

function narrowerStock(diameter: number, system: UnitSystem): number | null {
  try {
    return tradeSize(diameter, "down", stockDiameters(system));
  } catch (error) {
    if (error instanceof NoAnswerError) return null;
    throw error;
  }
}
