import { airPower } from "../core/fan/fanLaws";
import { fanPressure } from "../core/fan/fanCurve";
import { operatingPoint } from "../core/fan/operatingPoint";
import { answer } from "./answer";
import { needed, optional } from "./arguments";
import { readCurve } from "./fanTable/readCurve";
import { scaledCurve } from "./fanTable/scaledCurve";
import { inHost } from "./inHost";

/**
 * Fan static pressure at an airflow, read from the fan's curve, in in.w.g. (SI: Pa).
 * @customfunction FANPRESSURE
 * @param curve Two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa); a heading row is allowed
 * @param airflow Airflow, cfm (SI: m³/h), within the curve
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function fanpressure(curve: any[][], airflow: any[][], units?: any[][]): any[][] {
  return inHost(units, (system) => {
    const fan = readCurve(curve, system);
    return answer(units, "pressure", [needed("airflow", airflow, "airflow")], (flow) => fanPressure(fan, flow));
  });
}

/**
 * Airflow and pressure where the fan meets the system through a design point, in cfm and in.w.g. (SI: m³/h, Pa).
 * @customfunction OPERATINGPOINT
 * @param curve Two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa); a heading row is allowed
 * @param airflow Design airflow, cfm (SI: m³/h), above 0
 * @param pressure Pressure that the system asks for at it, in.w.g. (SI: Pa)
 * @param [fixed] Part of that pressure that does not change with airflow, in.w.g. (SI: Pa); 0 when left out
 * @param [units] "IP" (default) or "SI"
 * @returns airflow and pressure
 */
export function operatingpoint(
  curve: any[][],
  airflow: any[][],
  pressure: any[][],
  fixed?: any[][],
  units?: any[][],
): any[][] {
  return inHost(units, (system) => {
    const fan = readCurve(curve, system);
    const design = [
      needed("airflow", airflow, "airflow"),
      needed("pressure", pressure, "pressure"),
      optional("fixed", fixed, "pressure", 0),
    ] as const;
    const flows = answer(units, "airflow", design, (...point) => operatingPoint(fan, ...point).airflow);
    const pressures = answer(units, "pressure", design, (...point) => operatingPoint(fan, ...point).pressure);
    const crossings = answer(units, "ratio", design, (...point) => operatingPoint(fan, ...point).crossings);
    const several = crossings.some((row) => row.some((count) => typeof count === "number" && count > 1));
    return flows.map((row, index) => {
      const count = crossings[index]![0]!;
      const note =
        typeof count === "number" && count > 1
          ? `the curve has a hump: ${count} points meet, this is the stable one`
          : "";
      return several ? [...row, ...pressures[index]!, note] : [...row, ...pressures[index]!];
    });
  });
}

/**
 * A fan curve at another speed, air density or size (no unit: the answer is in the curve's own units, cfm or m³/h ...).
 * @customfunction FANLAW
 * @param curve Two columns: airflow and fan static pressure, any units; a heading row is allowed
 * @param speedratio New speed / rated speed, above 0 to 10
 * @param [densityratio] New air density / rated density, above 0 to 10; 1 when left out
 * @param [sizeratio] New impeller diameter / rated diameter (same shape), above 0 to 10; 1 when left out
 * @returns curve
 */
export function fanlaw(curve: any[][], speedratio: any[][], densityratio?: any[][], sizeratio?: any[][]): any[][] {
  return inHost(null, () => scaledCurve(curve, speedratio, densityratio, sizeratio));
}

/**
 * Power in moving air, or with an efficiency the shaft power that it takes, in hp (SI: kW).
 * @customfunction AIRPOWER
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param pressure Pressure, in.w.g. (SI: Pa), at least 0; total pressure for total power
 * @param [efficiency] Efficiency, above 0 to 1; when left out the power in the air
 * @param [units] "IP" (default) or "SI"
 * @returns power
 */
export function airpower(airflow: any[][], pressure: any[][], efficiency?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "power",
    [
      needed("airflow", airflow, "airflow"),
      needed("pressure", pressure, "pressure"),
      optional("efficiency", efficiency, "ratio", 1),
    ],
    airPower,
  );
}
