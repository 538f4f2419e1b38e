import { claimTable } from "../claimTable/claimTable";
import { readFacts } from "../claimTable/readFacts";
import { exampleFacts } from "../exampleTables";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { AIR } from "../letters";

/**
 * Claimed numbers held against physics, a row per check: number, bound, unit, verdict, why (cfm, in.w.g.; SI: m³/h, Pa).
 * @customfunction CLAIM
 * @param facts Names beside values: airflow, pressure, motor power, speed, filter rating, sound; inlet, impeller, hose diameter ...
 * @param [units] "IP" (default: cfm, in.w.g., hp, in, ft², ft) or "SI" (m³/h, Pa, kW, mm, m², m); speed in rpm
 * @returns table
 */
export function claim(facts: unknown[][], units?: unknown[][]): unknown[][] {
  return inHost(units, (system) => claimTable(readFacts(facts, system), system));
}

export const guide: Guide = {
  maths: "Each number against a bound: air power, tip speed, velocity pressure, face velocity",
  source: "eulerMemory",
  basis: "from memory",
  limits: "Finds what cannot be. A number that holds may still be untrue: ask for the curve and the test standard.",
  cautions: ["wheel over-speed", "capture"],
  example: { asks: "An invented leaflet: 4000 cfm, 12 in.w.g., 1.5 hp", args: [exampleFacts] },
};

export const formula: Formula = {
  tex: [
    "\\max_Q\\,\\bigl(Q\\,p\\bigr) = \\tfrac14\\,Q_\\text{max}\\,p_\\text{max} \\le W_\\text{motor}, \\qquad p_\\text{max} \\le \\rho u^2, \\qquad u = \\pi d N",
  ],
  letters: {
    "Q_\\text{max}": "claimed airflow [m³/s]",
    "p_\\text{max}": "claimed pressure [Pa]",
    "W_\\text{motor}": "power of the motor [W]",
    u: "speed of the impeller's tip [m/s]",
    d: "impeller diameter [m]",
    N: "revolutions a second [1/s]",
    "\\rho": AIR,
  },
};
