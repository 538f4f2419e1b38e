import { ALTITUDE_LIMITS, HUMIDITY_LIMITS, TEMPERATURE_LIMITS, USUAL_TEMPERATURE } from "../../core/air/constants";
import { moistAirDensity } from "../../core/air/moistAirDensity";
import { DEGREES } from "../../reference/zeroWords";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { optional, signature } from "../signature";

export const takes = signature(
  {
    temperature: optional("temperature", TEMPERATURE_LIMITS, USUAL_TEMPERATURE, DEGREES),
    altitude: optional("length", ALTITUDE_LIMITS, 0),
    humidity: optional("ratio", HUMIDITY_LIMITS, 0),
  },
  "density",
);

/**
 * Density of moist air, in lb/ft³ (SI: kg/m³). Standard air is 0.075 lb/ft³.
 * @customfunction DENSITY
 * @param [temperature] Air temperature, °F (SI: °C), -58 to 212 °F; 70 °F when left out, "0°" for 0
 * @param [altitude] Height above sea level, ft (SI: m), -1640 to 36089 ft; 0 when left out
 * @param [humidity] Relative humidity, 0 to 1; 0 when left out
 * @param [units] "IP" (default) or "SI"
 * @returns density
 */
export function density(
  temperature?: unknown[][],
  altitude?: unknown[][],
  humidity?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [temperature, altitude, humidity, units], ({ temperature, altitude, humidity }) =>
    moistAirDensity(temperature, altitude, humidity),
  );
}

export const guide: Guide = {
  maths: "Moist air as an ideal mixture, pressure by the standard atmosphere",
  source: "psychrolib",
  basis: "read",
  limits: "Changes with the weather by a few per cent. Standard air, 0.075 lb/ft³, is taken where none is given.",
  also: ["altitude", "temperature", "elevation", "thin air"],
  example: { asks: "Air at 70 °F, 5000 ft above the sea", args: ["70", "5000"] },
};

export const formula: Formula = {
  tex: [
    "p = 101325\\,(1 - 2.25577\\times10^{-5}\\,z)^{5.2559}",
    "\\rho = \\frac{1+w}{v}, \\qquad v = \\frac{R_{da} T\\,(1 + 1.607858\\,w)}{p}, \\qquad w = 0.621945\\,\\frac{\\varphi p_{ws}}{p - \\varphi p_{ws}}",
  ],
  letters: {
    z: "height above sea level [m]",
    p: "pressure of the air [Pa]",
    w: "humidity ratio [kg/kg]",
    v: "volume for each kilogram of dry air [m³/kg]",
    "\\varphi": "relative humidity, 0 to 1",
    "p_{ws}": "saturation pressure of water at the air's temperature [Pa]",
    T: "absolute temperature [K]",
    "R_{da}": "gas constant of dry air, 287.042 J/(kg K)",
  },
};
