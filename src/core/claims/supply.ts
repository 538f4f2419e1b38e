import { requireWithin } from "../errors";

/**
 * Most power that a motor can take from its supply.
 *
 *     W = U I,  three phases: W = sqrt(3) U I
 *
 * @param volts [V] between two wires, above 0
 * @param amps [A] in each wire, above 0
 * @param phases 1 or 3
 * @returns [W]
 * @throws DomainError if volts or amps are not above 0
 * @source commonPractice the power factor at most 1
 */
export function supplyPower(volts: number, amps: number, phases: 1 | 3): number {
  requireWithin("volts", volts, { above: 0 }, "V");
  requireWithin("amps", amps, { above: 0 }, "A");
  return volts * amps * Math.sqrt(phases);
}
