import { toMatrix } from "./cells";
import { readDensity } from "./arguments";
import { readCurve } from "./fanTable/readCurve";
import { flowTable } from "./flowTable/flowTable";
import { gainTable } from "./flowTable/gainTable";
import { readOpen, runNames, withOpenGates } from "./flowTable/openRuns";
import { remembering } from "./flowTable/remember";
import { scenarioTable } from "./flowTable/scenarioTable";
import { inHost } from "./inHost";

const remember = remembering();

/**
 * What really flows with a fan: a row per run, last row the fan's airflow, pressure and leaks (cfm, in.w.g.; m³/h, Pa).
 * @customfunction SOLVE
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI": of the table, the curve and the answer
 * @returns table
 */
export function solve(runs: any[][], curve: any[][], open?: any[][], density?: any[][], units?: any[][]): any[][] {
  return inHost(units, (system) => {
    const table = toMatrix(runs);
    const air = readDensity(density, system);
    const opened = readOpen("open", open, runNames(table));
    return remember(["SOLVE", table, toMatrix(curve), opened && [...opened], air, system], () =>
      flowTable(withOpenGates(table, opened), { curve: readCurve(curve, system), density: air }, system),
    );
  });
}

/**
 * What each open hood gets, scenario by scenario: airflow and velocity, fan point, slowest run (cfm, fpm; m³/h, m/s).
 * @customfunction SCENARIOS
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param scenarios A row each: the open runs in one cell between ; or , (a name before it), or a column per run with marks
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function scenarios(
  runs: any[][],
  curve: any[][],
  scenarios: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return inHost(units, (system) => {
    const [table, sets] = [toMatrix(runs), toMatrix(scenarios)];
    const air = readDensity(density, system);
    return remember(["SCENARIOS", table, toMatrix(curve), sets, air, system], () =>
      scenarioTable(table, { curve: readCurve(curve, system), density: air }, sets, system),
    );
  });
}

/**
 * What one change would give at a hood, best first: run, change, airflow gained, new velocity (cfm, fpm; SI: m³/h, m/s).
 * @customfunction GAINS
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param hood Name of the run whose hood should get more air
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function gains(
  runs: any[][],
  curve: any[][],
  hood: any[][],
  open?: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return inHost(units, (system) => {
    const table = toMatrix(runs);
    const air = readDensity(density, system);
    const opened = readOpen("open", open, runNames(table));
    return remember(["GAINS", table, toMatrix(curve), toMatrix(hood), opened && [...opened], air, system], () =>
      gainTable(withOpenGates(table, opened), { curve: readCurve(curve, system), density: air }, hood, system),
    );
  });
}
