import type { GateConditionRow } from "../../reference/schema";
import { sectionArea } from "../section/section";

/**
 * Estimated effective opening of a slide gate in a named condition.
 *
 *     A = gap * (length per diameter) * D
 *
 * @param condition row of the table of gate conditions
 * @param diameter [m] of the gate, above 0 to 20
 * @returns [m2]
 * @throws DomainError if the diameter is outside its range
 * @source commonPractice an estimate; no measurement of slide-gate leaks was found published
 */
export function gateOpening(condition: GateConditionRow, diameter: number): number {
  sectionArea(diameter, null); // refuses what is no diameter
  return condition.gap * condition.lengthPerDiameter * diameter;
}
