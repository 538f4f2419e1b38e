import { gateOpening } from "../core/leaks/gateOpening";
import { DISCHARGE_COEFFICIENT, leakArea, leakAtSuction, openingLeak } from "../core/leaks/openingLeak";
import { seamLeak } from "../core/leaks/seamLeak";
import { answer } from "./answer";
import { density as densityArgument, needed, optional } from "./arguments";
import { gateCondition, leakageClass } from "./leakArguments";

/**
 * Airflow through an opening under a suction, in cfm (SI: m³/h).
 * @customfunction LEAK
 * @param area Open area, in² (SI: mm²), at least 0
 * @param suction Static suction in the duct, in.w.g. (SI: Pa), at least 0
 * @param [coefficient] Discharge coefficient, above 0 to 1; 0.6 when left out (crack, sharp-edged hole)
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function leak(
  area: any[][],
  suction: any[][],
  coefficient?: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "airflow",
    [
      needed("area", area, "openArea"),
      needed("suction", suction, "pressure"),
      optional("coefficient", coefficient, "ratio", DISCHARGE_COEFFICIENT),
      densityArgument(density),
    ],
    openingLeak,
  );
}

/**
 * Effective leakage area of a measured leak: the opening that would pass it, in in² (SI: mm²).
 * @customfunction LEAKAREA
 * @param airflow Measured leak, cfm (SI: m³/h), at least 0
 * @param suction Static suction there while measuring, in.w.g. (SI: Pa), above 0
 * @param [coefficient] Discharge coefficient, above 0 to 1; 0.6 when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns area
 */
export function leakarea(
  airflow: any[][],
  suction: any[][],
  coefficient?: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "openArea",
    [
      needed("airflow", airflow, "airflow"),
      needed("suction", suction, "pressure"),
      optional("coefficient", coefficient, "ratio", DISCHARGE_COEFFICIENT),
      densityArgument(density),
    ],
    leakArea,
  );
}

/**
 * A measured leak at another suction, in the airflow's own unit (cfm or m³/h).
 * @customfunction LEAKAT
 * @param airflow Measured leak, any unit, at least 0
 * @param suction Suction while measuring, any unit, above 0
 * @param newsuction The other suction, in the same unit, at least 0
 * @param [exponent] 0.5 for an opening (default), 0.65 for seams; 0.5 to 1
 * @returns airflow
 */
export function leakat(airflow: any[][], suction: any[][], newsuction: any[][], exponent?: any[][]): any[][] {
  return answer(
    null,
    "ratio",
    [
      needed("airflow", airflow, "ratio"),
      needed("suction", suction, "ratio"),
      needed("newsuction", newsuction, "ratio"),
      optional("exponent", exponent, "ratio", 0.5),
    ],
    leakAtSuction,
  );
}

/**
 * ESTIMATE of a slide gate's leak in a named condition, in cfm (SI: m³/h); no measurement is published, so measure yours.
 * @customfunction GATELEAK
 * @param condition Name from the table "gates", such as "open bare slot"
 * @param diameter Gate diameter, in (SI: mm), above 0
 * @param suction Static suction in the duct there, in.w.g. (SI: Pa), at least 0
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function gateleak(
  condition: any[][],
  diameter: any[][],
  suction: any[][],
  density?: any[][],
  units?: any[][],
): any[][] {
  return answer(
    units,
    "airflow",
    [
      gateCondition("condition", condition),
      needed("diameter", diameter, "diameter"),
      needed("suction", suction, "pressure"),
      densityArgument(density),
    ],
    (row, width, draught, air) => openingLeak(gateOpening(row, width), draught, DISCHARGE_COEFFICIENT, air),
  );
}

/**
 * Leak of a duct's seams and joints by leakage class, in cfm (SI: m³/h).
 * @customfunction SEAMLEAK
 * @param classOfDuct Class number (cfm per 100 ft² at 1 in.w.g.), or an EN letter A to D
 * @param surface Surface of the duct wall, ft² (SI: m²), at least 0
 * @param pressure Static suction or pressure, in.w.g. (SI: Pa), at least 0
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function seamleak(classOfDuct: any[][], surface: any[][], pressure: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "airflow",
    [leakageClass("class", classOfDuct), needed("surface", surface, "area"), needed("pressure", pressure, "pressure")],
    seamLeak,
  );
}
