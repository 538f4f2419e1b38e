import { readFacts } from "./claimTable/readFacts";
import { claimTable } from "./claimTable/claimTable";
import { inHost } from "./inHost";

/**
 * Claimed numbers held against physics, a row per check: number, bound, unit, verdict, why (cfm, in.w.g.; SI: m³/h, Pa).
 * @customfunction CLAIM
 * @param facts Names beside values: airflow, pressure, motor power, speed, filter rating, sound; inlet, impeller, hose diameter ...
 * @param [units] "IP" (default: cfm, in.w.g., hp, in, ft², ft) or "SI" (m³/h, Pa, kW, mm, m², m); speed in rpm
 * @returns table
 */
export function claim(facts: any[][], units?: any[][]): any[][] {
  return inHost(units, (system) => claimTable(readFacts(facts, system), system));
}
