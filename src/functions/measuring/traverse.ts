import { traverseVelocity } from "../../core/measuring/traverseVelocity";
import { fromSI, unitOf } from "../../reference/quantities";
import { readChoice, readDensity, singleCell } from "../arguments";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { AIR } from "../letters";
import { readReadings } from "../measuringTable/readReadings";

const KINDS = ["velocity", "velocity pressure", "pressure"] as const;

/**
 * Mean velocity of a duct traverse, in fpm (SI: m/s). Velocity pressures are averaged as roots.
 * @customfunction TRAVERSE
 * @param readings Readings in any shape: fpm (SI: m/s) or in.w.g. (SI: Pa); "still" for 0, "not read" for none
 * @param [kind] What was read: "velocity" (default) or "velocity pressure"
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out; for velocity pressures only
 * @param [units] "IP" (default) or "SI"
 * @returns velocity
 */
export function traverse(
  readings: unknown[][],
  kind?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return inHost(units, (system) => {
    const read = readChoice("kind", singleCell("kind", kind), KINDS) === "velocity" ? "velocity" : "velocity pressure";
    const air = readDensity(density, system);
    const mean = traverseVelocity(readReadings(readings, read, air, system), read, air);
    return [[fromSI(mean, unitOf("velocity", system))]];
  });
}

export const guide: Guide = {
  maths: "v = mean of the readings; of pressures: v = mean of √(2 pv / ρ)",
  source: "certificationExam",
  basis: "read",
  limits:
    "A blank cell or a 0 is refused, since a 0 may be either: write still where the air stood still, which counts, and not read where nobody read.",
  cautions: ["power off", "fan inlet guard", "ladders"],
  also: ["pitot tube", "anemometer", "average velocity"],
  example: { asks: "Mean of three velocities", args: [[[3900], [4100], [4000]]] },
};

export const formula: Formula = {
  tex: [
    "\\bar V = \\frac1n\\sum V_i \\qquad\\text{or}\\qquad \\bar V = \\sqrt{2/\\rho}\\;\\frac1n\\sum\\sqrt{p_{v,i}}",
  ],
  letters: {
    n: "readings, those of still air among them",
    V_i: "a velocity as read",
    "p_{v,i}": "a velocity pressure as read [Pa]",
    "\\rho": AIR,
  },
};
