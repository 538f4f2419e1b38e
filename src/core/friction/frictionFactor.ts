import { requireWithin } from "../errors";
import { logOfRatio, NEAR } from "../numeric/logOfRatio";
import { LAMINAR_END, LAMINAR_END_FACTOR, TURBULENT_START } from "./flowRegime";

/** 2 log10(y) = TO_DECIMAL ln(y). */
export const TO_DECIMAL = 2 / Math.LN10;

/** Rougher than this share of the diameter a wall is no longer a rough wall but an obstacle. */
export const ROUGHEST = 0.2;

/**
 * Darcy friction factor of a round duct.
 *
 *     Re <= 2000: f = 64 / Re
 *     Re >= 4000: 1/sqrt(f) = -2 log10( (e/D)/3.7 + 2.51/(Re sqrt(f)) )   (Colebrook-White)
 *     between:    linear in Re from one to the other, continuous and rising
 *
 * @param reynolds [-] above 0
 * @param relativeRoughness [-] wall roughness / diameter, 0 to 0.2 (the equation was fitted to 0.05)
 * @param near [-] 1/sqrt(f), of Re 4000 below it, where it is known about; it saves steps, and the result is the same
 * @returns [-] Darcy friction factor (four times Fanning's)
 * @throws DomainError if an argument is outside its range
 * @source colebrook1939 Colebrook-White with 3.7 and 2.51; hagenPoiseuille below Re 2000
 * @example frictionFactor(1000, 0) // => 0.064
 */
export function frictionFactor(reynolds: number, relativeRoughness: number, near?: number): number {
  requireWithin("reynolds", reynolds, { above: 0 }, "");
  requireWithin("relative roughness", relativeRoughness, { atLeast: 0, atMost: ROUGHEST }, "of the diameter");
  if (reynolds <= LAMINAR_END) return 64 / reynolds;
  if (reynolds >= TURBULENT_START) return colebrook(reynolds, relativeRoughness, near);
  const share = (reynolds - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
  return LAMINAR_END_FACTOR + share * (colebrook(TURBULENT_START, relativeRoughness, near) - LAMINAR_END_FACTOR);
}

const SETTLED = 1e-4; // a step this small leaves an error of its cube, of a number near 7
const MOST_STEPS = 4;

/**
 * 1/sqrt(f) in turbulent air by Altshul's explicit formula, a near place to begin: f = 0.11 (e/D + 68/Re)^(1/4).
 *
 * @param reynolds [-] above 0
 * @param relativeRoughness [-] 0 to 0.2
 * @returns [-]
 * @source house Altshul's formula from memory; a beginning, never a result
 */
export const altshulRoot = (reynolds: number, relativeRoughness: number): number =>
  1 / Math.sqrt(0.11 * Math.sqrt(Math.sqrt(relativeRoughness + 68 / reynolds)));

/**
 * Colebrook-White to machine precision: Halley steps on g(x) = x + 2 log10(a + b x), x = 1/sqrt(f). Each triples the right
 * digits; from Altshul's formula two are enough in a workshop's ducts, from a root that is known one.
 */
function colebrook(
  reynolds: number,
  relativeRoughness: number,
  near = altshulRoot(reynolds, relativeRoughness),
): number {
  const a = relativeRoughness / 3.7;
  const b = 2.51 / reynolds;
  let x = near;
  let inside = a + b * x;
  let log = Math.log(inside);
  for (let steps = 1; ; steps++) {
    const g = x + TO_DECIMAL * log;
    const slope = (TO_DECIMAL * b) / inside; // g' = 1 + slope, g'' = -slope b / inside
    const first = 1 + slope;
    const step = (2 * g * first) / (2 * first * first + (g * slope * b) / inside);
    x -= step;
    if (Math.abs(step) < SETTLED || steps === MOST_STEPS) break;
    const next = a + b * x;
    const u = (next - inside) / (next + inside);
    log = u * u < NEAR ? log + logOfRatio(u, u * u) : Math.log(next);
    inside = next;
  }
  return 1 / (x * x);
}

/** 1/sqrt(f) by Haaland's explicit formula, within 2 % of Colebrook-White. Source: haaland1983. */
const haalandRoot = (reynolds: number, relativeRoughness: number): number =>
  (-1.8 / Math.LN10) * Math.log((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds);

/**
 * Darcy friction factor by Haaland's explicit formula.
 *
 *     1/sqrt(f) = -1.8 log10( ((e/D)/3.7)^1.11 + 6.9/Re )
 *
 * The yardstick for speed and the start of the exact solution; results use {@link frictionFactor}.
 *
 * @param reynolds [-] at least 4000
 * @param relativeRoughness [-] 0 to 0.2
 * @returns [-] within 2 % of Colebrook-White
 * @throws DomainError if an argument is outside its range
 * @source haaland1983
 */
export function frictionFactorHaaland(reynolds: number, relativeRoughness: number): number {
  requireWithin("reynolds", reynolds, { atLeast: TURBULENT_START }, "");
  requireWithin("relative roughness", relativeRoughness, { atLeast: 0, atMost: ROUGHEST }, "of the diameter");
  return haalandRoot(reynolds, relativeRoughness) ** -2;
}
