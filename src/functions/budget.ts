import { budgetTable } from "./budgetTable/budgetTable";
import { readDensity } from "./arguments";
import { inHost } from "./inHost";

/**
 * Design pass over a table of runs: one row per run, last row the fan's airflow and static pressure (cfm, in.w.g.; m³/h, Pa).
 * @customfunction BUDGET
 * @param runs Table with headers Run, To, Diameter and any of Length, Material, Flex, Fittings, Hood, Airflow, Gate, Leak ...
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI": of the table and of the answer
 * @returns table
 */
export function budget(runs: any[][], density?: any[][], units?: any[][]): any[][] {
  return inHost(units, (system) => budgetTable(runs, readDensity(density, system), system));
}
