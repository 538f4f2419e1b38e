import { diameterForVelocity, equivalentDiameter, meanVelocity, sectionArea } from "../core/section/section";
import { type Rounding, tradeSize } from "../core/section/tradeSize";
import { stockDiameters } from "../reference/tradeSizes";
import { requireWithin } from "../core/errors";
import { answer } from "./answer";
import { choice, needed, optional, readUnits } from "./arguments";

/**
 * Cross-section of a round duct, or with a height of a rectangle, in ft² (SI: m²).
 * @customfunction AREA
 * @param diameter Inside diameter, or width of a rectangle, in (SI: mm), above 0
 * @param [height] Height of a rectangular duct, in (SI: mm); leave out for a round one
 * @param [units] "IP" (default) or "SI"
 * @returns area
 */
export function area(diameter: any[][], height?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "area",
    [needed("diameter", diameter, "diameter"), optional("height", height, "diameter", null)],
    sectionArea,
  );
}

/**
 * Mean velocity of an airflow in a duct, in fpm (SI: m/s).
 * @customfunction VELOCITY
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param diameter Inside diameter, or width of a rectangle, in (SI: mm), above 0
 * @param [height] Height of a rectangular duct, in (SI: mm); leave out for a round one
 * @param [units] "IP" (default) or "SI"
 * @returns velocity
 */
export function velocity(airflow: any[][], diameter: any[][], height?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "velocity",
    [
      needed("airflow", airflow, "airflow"),
      needed("diameter", diameter, "diameter"),
      optional("height", height, "diameter", null),
    ],
    (flow, width, rise) => meanVelocity(flow, sectionArea(width, rise)),
  );
}

/**
 * Airflow that a mean velocity carries through a duct, in cfm (SI: m³/h).
 * @customfunction AIRFLOW
 * @param velocity Mean velocity, fpm (SI: m/s), at least 0
 * @param diameter Inside diameter, or width of a rectangle, in (SI: mm), above 0
 * @param [height] Height of a rectangular duct, in (SI: mm); leave out for a round one
 * @param [units] "IP" (default) or "SI"
 * @returns airflow
 */
export function airflow(velocity: any[][], diameter: any[][], height?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "airflow",
    [
      needed("velocity", velocity, "velocity"),
      needed("diameter", diameter, "diameter"),
      optional("height", height, "diameter", null),
    ],
    (speed, width, rise) => {
      requireWithin("velocity", speed, { atLeast: 0 }, "m/s");
      return speed * sectionArea(width, rise);
    },
  );
}

/**
 * Exact round diameter that carries an airflow at a velocity, in inches (SI: mm). TRADESIZE gives the stock size.
 * @customfunction DIAMETER
 * @param airflow Airflow, cfm (SI: m³/h), above 0
 * @param velocity Wanted velocity, fpm (SI: m/s), above 0
 * @param [units] "IP" (default) or "SI"
 * @returns diameter
 */
export function diameter(airflow: any[][], velocity: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "diameter",
    [needed("airflow", airflow, "airflow"), needed("velocity", velocity, "velocity")],
    diameterForVelocity,
  );
}

/**
 * Stock duct diameter beside a wanted one, in inches (SI: mm, the EN 1506 series).
 * @customfunction TRADESIZE
 * @param diameter Wanted diameter, in (SI: mm), above 0
 * @param [rounding] "down" (default, the smaller and faster pipe), "up" or "nearest"
 * @param [units] "IP" (default) or "SI"
 * @returns diameter
 */
export function tradesize(diameter: any[][], rounding?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "diameter",
    [needed("diameter", diameter, "diameter"), choice<Rounding>("rounding", rounding, ["down", "up", "nearest"])],
    (wanted, side) => tradeSize(wanted, side, stockDiameters(readUnits(units))),
  );
}

/**
 * Round diameter with the same friction as a rectangular duct, in inches (SI: mm). Velocity takes the true area.
 * @customfunction EQUIVDIAMETER
 * @param width Inside width, in (SI: mm), above 0
 * @param height Inside height, in (SI: mm), above 0
 * @param [units] "IP" (default) or "SI"
 * @returns diameter
 */
export function equivdiameter(width: any[][], height: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "diameter",
    [needed("width", width, "diameter"), needed("height", height, "diameter")],
    equivalentDiameter,
  );
}
