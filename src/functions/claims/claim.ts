import { claimTable } from "../claimTable/claimTable";
import { readFacts } from "../claimTable/readFacts";
import { exampleFacts } from "../exampleTables";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { AIR } from "../letters";

/**
 * Claimed numbers held against physics, a row per check: number, bound, unit, verdict, why (cfm, in.w.g.; SI: m³/h, Pa).
 * @customfunction CLAIM
 * @param facts Names beside values: airflow, rated point, pressure, motor power, volts, wheel kind, speed, filter area, hose length ...
 * @param [units] "IP" (default: cfm, in.w.g., hp, in, ft², ft) or "SI" (m³/h, Pa, kW, mm, m², m); speed in rpm
 * @returns table
 */
export function claim(facts: unknown[][], units?: unknown[][]): unknown[][] {
  return inHost(units, (system) => claimTable(readFacts(facts, system), system));
}

export const guide: Guide = {
  maths: "Each number against a bound: power in the air, motor, supply, tip speed, hose, filter",
  source: "eulerMemory",
  basis: "from memory",
  limits:
    "Impossible only by a law with every fact given; cannot tell names the fact that decides. A number that holds may still be untrue.",
  cautions: ["wheel over-speed", "capture"],
  also: ["dust collector", "advertised cfm", "specification", "horsepower"],
  example: { asks: "An invented leaflet: 1000 cfm at 10 in.w.g., 1 hp", args: [exampleFacts] },
};

export const formula: Formula = {
  tex: [
    "Q\\,(p_0 - p)\\,\\ln\\frac{p_0}{p_0 - p} \\le W_\\text{motor}, \\qquad W_\\text{motor} \\le \\sqrt{n}\\,U I",
    "p \\le p_0\\,\\bigl(e^{z \\rho u^2 / p_0} - 1\\bigr), \\qquad u = \\pi d N",
  ],
  letters: {
    Q: "airflow of the rated point [m³/s]",
    p: "pressure at it, or the highest [Pa]",
    p_0: "pressure of the atmosphere [Pa]",
    "W_\\text{motor}": "power of the motor [W]",
    n: "phases, 1 or 3",
    U: "volts [V]",
    I: "amps [A]",
    z: "stages",
    u: "speed of the impeller's tip [m/s]",
    d: "impeller diameter [m]",
    N: "revolutions a second [1/s]",
    "\\rho": AIR,
  },
};
