import { DomainError } from "../errors";
import { sectionArea } from "../section/section";
import { DISCHARGE_COEFFICIENT } from "./openingLeak";

/**
 * Leak at the upstream end of a run that carries air: it is driven by the static suction there, which the leak itself raises.
 *
 *     L = C_d A_l sqrt(2 (P + p_v(Q + L)) / rho)
 *
 * With g = C_d A_l / A this is the quadratic (1 - g^2) L^2 - 2 g^2 Q L - g^2 (Q^2 + 2 A^2 P / rho) = 0; the root is the
 * positive one.
 *
 * @param label how a sentence names the run
 * @param area [m2] effective leakage area, at least 0
 * @param arriving [m3/s] the run's airflow without the leak, at least 0
 * @param suction [Pa] total-pressure deficit P at the upstream end, at least 0
 * @param diameter [m] of the run
 * @param density [kg/m3]
 * @returns [m3/s]
 * @throws DomainError if the leak is as large as the duct (then it would be the duct's end)
 * @source house definition, leaks
 */
export function ownLeak(
  label: string,
  area: number,
  arriving: number,
  suction: number,
  diameter: number,
  density: number,
): number {
  if (area === 0) return 0;
  const duct = sectionArea(diameter, null);
  const g = (DISCHARGE_COEFFICIENT * area) / duct;
  if (!(g < 1)) throw new DomainError(`Leak of ${label}`, area, "smaller than the duct itself (area in m²)");
  const still = 1 - g * g;
  const driven = Math.sqrt(arriving * arriving + (still * duct * duct * 2 * suction) / density);
  return (g * g * arriving + g * driven) / still;
}
