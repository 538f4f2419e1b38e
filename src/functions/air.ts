import { moistAirDensity, USUAL_TEMPERATURE } from "../core/air/moistAirDensity";
import { velocityFromPressure, velocityPressure } from "../core/air/velocityPressure";
import { answer } from "./answer";
import { density as densityArgument, needed, optional } from "./arguments";

/**
 * Density of moist air, in lb/ft³ (SI: kg/m³). Standard air is 0.075 lb/ft³.
 * @customfunction DENSITY
 * @param [temperature] Air temperature, °F (SI: °C), -58 to 212 °F; 70 °F when left out
 * @param [altitude] Height above sea level, ft (SI: m), -1640 to 36089 ft; 0 when left out
 * @param [humidity] Relative humidity, 0 to 1; 0 when left out
 * @param [units] "IP" (default) or "SI"
 * @returns density
 */
export function density(temperature?: any[][], altitude?: any[][], humidity?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "density",
    [
      optional("temperature", temperature, "temperature", USUAL_TEMPERATURE, "is 0"),
      optional("altitude", altitude, "length", 0),
      optional("humidity", humidity, "ratio", 0),
    ],
    moistAirDensity,
  );
}

/**
 * Velocity pressure of moving air, in in.w.g. (SI: Pa).
 * @customfunction VELOCITYPRESSURE
 * @param velocity Velocity, fpm (SI: m/s), at least 0
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns pressure
 */
export function velocitypressure(velocity: any[][], density?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "pressure",
    [needed("velocity", velocity, "velocity"), densityArgument(density)],
    velocityPressure,
  );
}

/**
 * Velocity that has a velocity pressure, as a Pitot tube reads it, in fpm (SI: m/s).
 * @customfunction PITOTVELOCITY
 * @param pressure Velocity pressure, in.w.g. (SI: Pa), at least 0
 * @param [density] Air density, lb/ft³ (SI: kg/m³); standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns velocity
 */
export function pitotvelocity(pressure: any[][], density?: any[][], units?: any[][]): any[][] {
  return answer(
    units,
    "velocity",
    [needed("pressure", pressure, "pressure"), densityArgument(density)],
    velocityFromPressure,
  );
}
