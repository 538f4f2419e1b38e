import { num } from "./text";

// Psychrometrics of ASHRAE Fundamentals 2017 chapter 1, SI, as the core takes them from its library.
const TRIPLE_POINT = 273.16; // K
const AIR_CONSTANT = 287.042; // J/(kg K)
const MOLAR_RATIO = 0.621945; // of water to dry air
const LEAST_HUMIDITY = 0.0000001; // kg/kg, below it the library counts air as this damp

/** Pressure of saturated vapour [Pa] over ice below the triple point and over water above it. */
const saturation = (t: string): string => `EXP(IF(${t}<=${TRIPLE_POINT},${overIce(t)},${overWater(t)}))`;

const overIce = (t: string): string =>
  `6.3925247-5674.5359/${t}-0.009677843*${t}+${num(6.2215701e-7)}*${t}^2+${num(2.0747825e-9)}*${t}^3-${num(9.484024e-13)}*${t}^4+4.1635019*LN(${t})`;

const overWater = (t: string): string =>
  `1.3914993-5800.2206/${t}-0.048640239*${t}+${num(4.1764768e-5)}*${t}^2-${num(1.4452093e-8)}*${t}^3+6.5459673*LN(${t})`;

/** Pressure of the standard atmosphere [Pa] at an altitude [m]. */
const atmosphere = (altitude: string): string => `(101325*(1-${num(2.25577e-5)}*${altitude})^5.2559)`;

/** Density of moist air [kg/m3], and that it is not all vapour. */
export function moistAirDensity(
  temperature: string,
  altitude: string,
  humidity: string,
): { value: string; checks: readonly string[] } {
  const pressure = atmosphere(altitude);
  const dry = humidity === "0";
  const vapour = `(${humidity}*${saturation(temperature)})`;
  const ratio = dry
    ? num(LEAST_HUMIDITY)
    : `MAX(${num(LEAST_HUMIDITY)},${MOLAR_RATIO}*${vapour}/(${pressure}-${vapour}))`;
  return {
    value: `(1+${ratio})*${pressure}/(${AIR_CONSTANT}*${temperature}*(1+1.607858*${ratio}))`,
    checks: dry ? [] : [`${vapour}<=0.9*${pressure}`],
  };
}
