import { LEAKAGE_EXPONENT } from "../../reference/leakageClasses";
import { unitOf } from "../../reference/quantities";
import { requireWithin } from "../errors";

/**
 * Leak of a duct's seams and joints by leakage class.
 *
 *     Q = c A p^0.65
 *
 * @param constant [m3/(s m2 Pa^0.65)] at least 0, from the class
 * @param surface [m2] of duct wall, at least 0
 * @param pressure [Pa] static, suction or pressure, at least 0
 * @returns [m3/s]
 * @throws DomainError if an argument is outside its range
 * @source smacna1985 F = C_L p^0.65; en12237 f = c p^0.65
 */
export function seamLeak(constant: number, surface: number, pressure: number): number {
  requireWithin("class", constant, { atLeast: 0 }, "");
  requireWithin("surface", surface, { atLeast: 0 }, "m²");
  requireWithin("pressure", pressure, { atLeast: 0 }, "Pa");
  return constant * surface * pressure ** LEAKAGE_EXPONENT;
}

const airflowUnit = unitOf("airflow", "IP").factor; // cfm
const surfaceUnit = 100 * unitOf("area", "IP").factor; // 100 ft2
const pressureUnit = unitOf("pressure", "IP").factor; // in.w.g.

/**
 * Leakage class C_L (cfm per 100 ft2 at 1 in.w.g.) as the constant of {@link seamLeak}.
 *
 * @returns [m3/(s m2 Pa^0.65)]
 * @source smacna1985
 */
export const constantOfClass = (leakageClass: number): number =>
  (leakageClass * airflowUnit) / surfaceUnit / pressureUnit ** LEAKAGE_EXPONENT;

/**
 * European class value, L/(s m2) per Pa^0.65, as the constant of {@link seamLeak}.
 *
 * @returns [m3/(s m2 Pa^0.65)]
 * @source en12237
 */
export const constantOfEuropeanClass = (litres: number): number => litres * 1e-3;
