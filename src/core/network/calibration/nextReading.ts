import { covariance, type Seen, seen } from "../../numeric/withPriors";
import { type Model, priorsOf, saidBy, slopesOf, spreadOfReading } from "./model";
import type { Fit } from "./mostPlausible";
import type { Reading, Spot } from "./reading";

/** A further reading, and how sure the answers are then. */
export interface Next {
  readonly spot: Spot;
  readonly now: number; // [-] standard deviation of the logarithm, of all wanted answers together
  readonly then: number; // [-] with this reading
}

/**
 * The one further reading that would tell most of some answers.
 *
 *     variance then = variance - (g C h)^2 / (h C h + s^2)
 *
 * @param model the systems and what is unknown of them
 * @param fit of the readings there are
 * @param wanted the answers
 * @param spots what could be read, at the model's value; each with its deviation and its meter
 * @returns the best of them; null where none tells anything
 * @source jcgm100 5.2 the covariance; house for the choice
 */
export function nextReading(
  model: Model,
  fit: Fit,
  wanted: readonly Spot[],
  spots: readonly Omit<Reading, "value">[],
): Next | null {
  const priors = priorsOf(model);
  const readySlopes = (of: readonly Spot[]): Seen[] =>
    slopesOf(fit.state, of).map((slopes) => seen(fit.narrowed, slopes));
  const takeable = spots.filter((spot) => saidBy(fit.state, spot) > 0);
  const [answers, readings] = [readySlopes(wanted), readySlopes(takeable)];
  const variance = answers.reduce((sum, answer) => sum + covariance(priors, answer, answer), 0);
  let best: { spot: Spot; taken: number } | null = null;
  takeable.forEach((spot, index) => {
    const reading = readings[index]!;
    const spread = covariance(priors, reading, reading) + spreadOfReading(model, spot) ** 2;
    const taken = answers.reduce((sum, answer) => sum + covariance(priors, answer, reading) ** 2 / spread, 0);
    if (best === null || taken > best.taken) best = { spot, taken };
  });
  if (best === null) return null;
  const { spot, taken } = best as { spot: Spot; taken: number };
  const mean = (sum: number): number => Math.sqrt(Math.max(sum, 0) / answers.length);
  return { spot, now: mean(variance), then: mean(variance - taken) };
}
