import { AIR_VISCOSITY } from "../../air/constants";
import { LAMINAR_END, LAMINAR_END_FACTOR, TURBULENT_START } from "../../friction/flowRegime";
import { altshulRoot, frictionFactor, ROUGHEST } from "../../friction/frictionFactor";
import { columnsOf } from "../../numeric/columns";
import { sectionArea } from "../../section/section";

const TO_DECIMAL = 2 / Math.LN10;
const FIRST_ROOT = 7; // 1/sqrt(f) of a workshop's duct, near enough
const USUAL_VELOCITY = 20; // [m/s] of a workshop's air, near enough

/**
 * Straight lengths of one network, by index, with 1/sqrt(f) of each carried from one airflow to the next: while a solver
 * closes in on the airflows, one Halley step per visit brings Colebrook-White along instead of solving it anew.
 */
export interface Lengths {
  readonly resistance: Float64Array; // [Pa s2/m6] loss = resistance f Q^2
  readonly reynoldsPerFlow: Float64Array; // [s/m3]
  readonly wall: Float64Array; // [-] (e/D)/3.7
  readonly bandEnd: Float64Array; // [-] f at Re 4000, the upper end of the band after laminar flow; 0 until it is visited
  readonly root: Float64Array; // [-] 1/sqrt(f), carried
  readonly slope: Float64Array; // [Pa s/m3] d loss / dQ at the last visit
  readonly beginAlike: boolean; // with one factor for all; else each with its own at a usual velocity, which saves a sweep
}

/** Columns of each kind of length. */
export const LENGTH_COLUMNS = 6;

/**
 * Columns for so many lengths, not set yet.
 *
 * @returns columns of zeros
 * @source house
 */
export function newLengths(count: number, beginAlike = true, column = columnsOf(count, LENGTH_COLUMNS)): Lengths {
  return {
    resistance: column(),
    reynoldsPerFlow: column(),
    wall: column(),
    bandEnd: column(),
    root: column(),
    slope: column(),
    beginAlike,
  };
}

/** Puts one straight length in its place, whatever stood there; a length of 0 costs nothing and is never visited. */
export function setLength(
  lengths: Lengths,
  index: number,
  length: number,
  diameter: number,
  roughness: number,
  density: number,
): void {
  lengths.resistance[index] = lengths.slope[index] = lengths.bandEnd[index] = 0;
  if (length === 0) return;
  const area = sectionArea(diameter, null);
  lengths.resistance[index] = ((length / diameter) * density) / (2 * area * area);
  lengths.reynoldsPerFlow[index] = (density * diameter) / (area * AIR_VISCOSITY);
  const relativeRoughness = roughness / diameter;
  lengths.wall[index] = relativeRoughness / 3.7;
  if (lengths.root[index] !== 0) return; // one that was carried is nearer
  lengths.root[index] = lengths.beginAlike
    ? FIRST_ROOT
    : altshulRoot(lengths.reynoldsPerFlow[index] * USUAL_VELOCITY * area, relativeRoughness);
}

/**
 * Friction of a length at an airflow; its derivative is left in `slope`.
 *
 *     turbulent: d ln f / d ln Re = -2 s / (1 + s),  s = 2 b / (ln 10 (a + b x)),  x = 1/sqrt(f), a = (e/D)/3.7, b = 2.51/Re
 *
 * @param lengths of the network
 * @param index of the length
 * @param airflow [m3/s] at least 0
 * @returns [Pa]
 * @source colebrook1939 the same factor as frictionFactor, and its derivative by the implicit function theorem
 */
export function carriedFriction(lengths: Lengths, index: number, airflow: number): number {
  const resistance = lengths.resistance[index]!;
  if (resistance === 0) return 0;
  const perFlow = lengths.reynoldsPerFlow[index]!;
  const reynolds = perFlow * airflow;
  if (reynolds <= LAMINAR_END) {
    const perAirflow = (resistance * 64) / perFlow;
    lengths.slope[index] = perAirflow;
    return perAirflow * airflow;
  }
  if (reynolds < TURBULENT_START) {
    if (lengths.bandEnd[index] === 0) {
      const relativeRoughness = Math.min(3.7 * lengths.wall[index]!, ROUGHEST); // not above it by a last digit
      lengths.bandEnd[index] = frictionFactor(TURBULENT_START, relativeRoughness);
    }
    const rise = (lengths.bandEnd[index]! - LAMINAR_END_FACTOR) / (TURBULENT_START - LAMINAR_END);
    const factor = LAMINAR_END_FACTOR + rise * (reynolds - LAMINAR_END);
    lengths.slope[index] = resistance * airflow * (2 * factor + rise * reynolds);
    return resistance * factor * airflow * airflow;
  }
  const b = 2.51 / reynolds;
  const x = lengths.root[index]!;
  const inside = lengths.wall[index]! + b * x;
  const g = x + TO_DECIMAL * Math.log(inside);
  const s = (TO_DECIMAL * b) / inside;
  const first = 1 + s;
  const next = x - (2 * g * first) / (2 * first * first + (g * s * b) / inside);
  lengths.root[index] = next;
  const factor = 1 / (next * next);
  const shape = 2 - (2 * s) / first;
  lengths.slope[index] = resistance * factor * airflow * shape;
  return resistance * factor * airflow * airflow;
}

const MOST_VISITS = 12;
const SAME_ROOT = 1e-9; // relative: a Halley step after so small a change leaves the factor and its slope exact

/**
 * The same, whatever was carried from elsewhere: visited until nothing changes any more.
 *
 * @param lengths of the network
 * @param index of the length
 * @param airflow [m3/s] above 0
 * @returns [Pa]
 * @source colebrook1939 as carriedFriction
 */
export function settledFriction(lengths: Lengths, index: number, airflow: number): number {
  for (let visit = 0; ; visit++) {
    const before = lengths.root[index]!;
    const loss = carriedFriction(lengths, index, airflow);
    if (visit === MOST_VISITS || Math.abs(lengths.root[index]! - before) <= SAME_ROOT * before) return loss;
  }
}
