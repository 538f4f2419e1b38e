import { asMeant } from "../../core/measuring/asMeant";
import type { Spread } from "../../core/network/derivative/spread";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { SEALED } from "../flowTable/changes";
import type { Gain } from "../flowTable/oneChange";
import { COVERAGE, timesOrOver } from "./uncertaintyTable";

/** Of a sealed leak's variance leaks make more than this where its gain is told as times or over. */
const MOSTLY_LEAKS = 0.5;

/** By how much a gain is times or over where it is told so: a sealed leak's is as unsure as the leak, and a ± would reach below nothing. Else null. */
export const gainFactor = ({ words, gained }: Gain, spread: Pick<Spread, "deviation" | "byLeaks">): number | null =>
  words === SEALED && gained > 0 && spread.byLeaks > MOSTLY_LEAKS ? timesOrOver(gained, spread) : null;

/** What a change gives, without its unit: "+66 ± 8"; of a sealed leak "+0.8 to +30". */
export function gainInWords(gain: Gain, spread: Pick<Spread, "deviation" | "byLeaks">, system: UnitSystem): string {
  const unit = unitOf("airflow", system);
  const gained = fromSI(gain.gained, unit);
  const factor = gainFactor(gain, spread);
  if (factor !== null) return `${rough(gained / factor)} to ${rough(Math.max(gained * factor, SMALLEST))}`;
  const { value, error } = asMeant(gained, fromSI(COVERAGE * spread.deviation, unit));
  return spread.deviation === 0 ? signed(value) : `${signed(value)} ± ${error}`;
}

const SMALLEST = 0.1; // in the unit of the answer: less is written as 0.1

/** One digit and tenths at most, since such a range tells no more. */
const rough = (gained: number): string => signed(String(Math.round(10 * Number(gained.toPrecision(1))) / 10));

/** A rounded -0.0 is none below nothing. */
const signed = (value: string): string => (Number(value) === 0 ? value.replace("-", "") : Number(value) > 0 ? `+${value}` : value); // prettier-ignore
