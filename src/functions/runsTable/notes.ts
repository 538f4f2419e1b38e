import { LEAK_SHARE } from "../../reference/noteLimits";
import { sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import type { TransportRow } from "../../reference/schema";
import { inWords } from "../../reference/inWords";

/** Whether the dust settles at this velocity [m/s], or the air is faster than it need be. */
export function speedNotes(dust: TransportRow, velocity: number, system: UnitSystem): string[] {
  if (velocity < dust.low)
    return [sayNote("settles", { dust: dust.key, velocity: inWords(dust.low, "velocity", system) })];
  if (dust.high !== null && velocity > dust.high) {
    return [sayNote("tooFast", { velocity: inWords(dust.high, "velocity", system) })];
  }
  return [];
}

/** What share of a run's air its own leak carries, where that is much. */
export const leakNotes = (leak: number, airflow: number): string[] =>
  airflow > 0 && leak > LEAK_SHARE * airflow ? [sayNote("leaky", { percent: Math.round((leak / airflow) * 100) })] : [];
