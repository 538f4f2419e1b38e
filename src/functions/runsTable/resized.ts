import { ROUGHEST } from "../../core/friction/frictionFactor";
import { DomainError } from "../../core/errors";
import { type Run, runWith } from "../../core/network/network";
import type { TableRun } from "./readRun";

/**
 * A run in another diameter, with all that follows from it: its fittings, entry, hose and leaks.
 *
 * @throws DomainError where something of it has no value at that diameter
 */
export function resized(entry: TableRun, diameter: number): Run {
  const { run, fittings, coefficientOf, hoodOf, hoseTimesOf, leakOf } = entry;
  if (run.roughness > ROUGHEST * diameter)
    throw new DomainError("diameter", diameter, "wide enough for the roughness of its wall");
  return runWith(run, {
    diameter,
    coefficient: coefficientOf(fittings, diameter),
    hood: hoodOf(diameter),
    hoseTimes: hoseTimesOf(diameter),
    leakArea: leakOf(run.gate, diameter),
  });
}
