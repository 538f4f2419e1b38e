import { fromSI, type Quantity, type UnitSystem, unitOf } from "./quantities";

/** What most checks of a claim would be better for. */
export const CURVE = "the airflow at a pressure, or the curve";

/** Where sound is usually told. [m] */
export const NEAR: Readonly<Record<UnitSystem, number>> = { IP: 3 * 0.3048, SI: 1 };

const TYPED = 6; // figures, more than anybody types
const MEANT = 3; // figures that a computed number is worth

/** A number as it was typed stays so; a computed one has as many figures as it means. */
export function tidy(value: number): number {
  const typed = Number(value.toPrecision(TYPED));
  return Math.abs(typed - value) <= 1e-9 * Math.abs(value) ? typed : Number(value.toPrecision(MEANT));
}

/** A value with its unit in a sentence. */
export function tidyInWords(value: number, quantity: Quantity, system: UnitSystem): string {
  const unit = unitOf(quantity, system);
  return `${tidy(fromSI(value, unit))} ${unit.label}`;
}

export const percentOf = (share: number): string => `${tidy(100 * share)} %`;

/** Of a level whose distance is not told as a fact; "72 dB at 10 ft" in one cell is read as no more than text. */
export const NO_DISTANCE = "It says little without the distance, typed as noise distance";

/** What may stand behind a level of sound, in small letters, without blanks and points. */
export const LEVEL_UNITS: readonly string[] = ["", "db", "dba", "db(a)"];
export const NO_LEVEL = "Only a level in dB, such as 72 dB(A), can be told at another distance";

/** What is said of a motor's power that is none of its rating. */
export const NO_RATING =
  "A peak, maximum or input power is not the output that a motor holds for long, so nothing here is judged by it; its rated output decides.";
export const RATED_OUTPUT = "the motor's rated output";

export const RATING_ALONE =
  "A size or a share alone says nothing without the share of dust caught at each size and the test standard; a class of a standard says both, where a test report shows it for the whole filter.";

/** Whose efficiency is meant, and from where it is doubted. */
export const ofFanAlone = (doubtedFrom: string): string =>
  `The fan's own, not the motor's. Above ${doubtedFrom} we doubt it; nothing gives out more than it takes in.`;
