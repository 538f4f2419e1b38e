import type { Direction } from "./direction";
import type { Input } from "./inputs";

/** An input that may be off, with its effect: by how much the logarithm of its factor strays, as a standard deviation. */
export interface Uncertain<Effect = Direction> {
  readonly input: Input;
  readonly deviation: number; // [-]
  readonly effect: Effect; // on all answers, or on the one that is asked about
}

/** What all inputs together do to one answer. */
export interface Spread {
  readonly deviation: number; // in the answer's unit
  readonly largest: Input | null; // the input that does most; null where none does anything
  readonly share: number; // [-] its part of the variance
  readonly byLeaks: number; // [-] part of the variance that comes from leaks
}

/**
 * How far an answer strays with all its inputs, which are independent of each other.
 *
 *     u^2 = sum (dy/dx_i)^2 u_i^2
 *
 * @param inputs each with its effect
 * @param changeOf what an effect says of this answer
 * @returns the standard deviation, and what it mostly comes from
 * @source jcgm100 5.1.2
 */
export function spreadOf<Effect>(inputs: readonly Uncertain<Effect>[], changeOf: (effect: Effect) => number): Spread {
  let [variance, most, leaks] = [0, 0, 0];
  let largest: Input | null = null;
  for (const { input, deviation, effect } of inputs) {
    const part = (changeOf(effect) * deviation) ** 2;
    variance += part;
    if (input.kind === "leak") leaks += part;
    if (part > most) [most, largest] = [part, input];
  }
  if (variance === 0) return { deviation: 0, largest: null, share: 0, byLeaks: 0 };
  return { deviation: Math.sqrt(variance), largest, share: most / variance, byLeaks: leaks / variance };
}
