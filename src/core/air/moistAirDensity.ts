import psychrolib from "psychrolib";
import { DomainError, requireWithin } from "../errors";
import { ALTITUDE_LIMITS, HUMIDITY_LIMITS, TEMPERATURE_LIMITS } from "./constants";

const ZERO_CELSIUS = 273.15; // K

/**
 * Density of moist air at the standard atmosphere's pressure for an altitude.
 *
 *     rho = (1 + W) / v,  W from temperature, relative humidity and pressure
 *
 * Warm, high or damp air is thinner: the fan moves the same volume at less pressure. At 70 °F, sea level, dry it is
 * 0.0749 lb/ft3, a little under the rounded 0.075 of standard air.
 *
 * @param temperature [K] dry bulb, 223.15 to 373.15 (-50 to 100 °C)
 * @param altitude [m] above sea level, -500 to 11 000
 * @param humidity [-] relative, 0 to 1
 * @returns [kg/m3]
 * @throws DomainError if an argument is outside its range
 * @source psychrolib ASHRAE Fundamentals 2017 chapter 1, by the library psychrolib
 * @example moistAirDensity(288.15, 0, 0) // => 1.225
 */
export function moistAirDensity(temperature: number, altitude: number, humidity: number): number {
  requireWithin("temperature", temperature, TEMPERATURE_LIMITS, "K");
  requireWithin("altitude", altitude, ALTITUDE_LIMITS, "m");
  requireWithin("humidity", humidity, HUMIDITY_LIMITS, "");
  psychrolib.SetUnitSystem(psychrolib.SI);
  const celsius = temperature - ZERO_CELSIUS;
  const pressure = psychrolib.GetStandardAtmPressure(altitude);
  const vapour = psychrolib.GetSatVapPres(celsius) * humidity;
  // Hot, saturated air on a mountain would boil: the library has no answer there.
  if (vapour > 0.9 * pressure)
    throw new DomainError("humidity", humidity, "lower: air so hot and thin would be all vapour");
  return psychrolib.GetMoistAirDensity(
    celsius,
    psychrolib.GetHumRatioFromRelHum(celsius, humidity, pressure),
    pressure,
  );
}
