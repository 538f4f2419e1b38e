import { AIR_VISCOSITY } from "../../../core/air/constants";
import { LAMINAR_END, LAMINAR_END_FACTOR, TURBULENT_START } from "../../../core/friction/flowRegime";
import type { UnitSystem } from "../../../reference/quantities";
import { inSI, isBlankOrZero, num } from "./text";

/** Everything here is in SI: texts in, text out. A text that comes in is a number, a cell or stands in brackets. */

/** Cross-section of a round duct [m2]. */
export const roundArea = (diameter: string): string => `(PI()/4*${diameter}^2)`;

/** Cross-section [m2] of a round duct, or of a rectangle where a height stands: a cell as it is, in the user's unit. */
export function sectionArea(diameter: string, height: string, system: UnitSystem): string {
  if (height === "") return roundArea(diameter);
  return `IF(${isBlankOrZero(height)},${roundArea(diameter)},${diameter}*${inSI(height, "diameter", system)})`;
}

/** Velocity pressure of an airflow in a round duct [Pa]: 8 rho Q^2 / (pi^2 D^4). */
export const velocityPressure = (airflow: string, diameter: string, density: string): string =>
  `(${num(8 / Math.PI ** 2)}*${density}*${airflow}^2/${diameter}^4)`;

/** Reynolds number of an airflow in a round duct: 4 rho Q / (pi mu D). */
export const reynoldsNumber = (airflow: string, diameter: string, density: string): string =>
  `(${num(4 / (Math.PI * AIR_VISCOSITY))}*${density}*${airflow}/${diameter})`;

const BAND = TURBULENT_START - LAMINAR_END;
const laminar = num(LAMINAR_END_FACTOR);
const LEVELS = 9; // of the nested fixed point: then it is right to about 2e-9
const TO_DECIMAL = 2 / Math.LN10;

/**
 * Darcy friction factor: 64/Re to Re 2000, Colebrook-White from Re 4000, linear between. Colebrook-White is the fixed point
 * x = -2 log10(a + b x) of x = 1/sqrt(f), nested from Haaland's explicit value.
 *
 * @param reynolds above 0
 */
export function frictionFactor(reynolds: string, relativeRoughness: string): string {
  const a = `${relativeRoughness}/3.7`;
  const rough = `MAX(${TURBULENT_START},${reynolds})`;
  let x = `${num(-1.8 / Math.LN10)}*LN((${a})^1.11+6.9/${rough})`;
  for (let level = 0; level < LEVELS; level++) x = `${num(-TO_DECIMAL)}*LN(${a}+2.51/${rough}*(${x}))`;
  const turbulent = `(${x})^(-2)`;
  return `IF(${reynolds}<=${LAMINAR_END},64/${reynolds},${laminar}+MIN(1,(${reynolds}-${LAMINAR_END})/${BAND})*(${turbulent}-${laminar}))`;
}

/** Friction of a straight round duct [Pa/m]; 0 in still air. Roughness [m]. */
export function lossPerLength(airflow: string, diameter: string, roughness: string, density: string): string {
  const factor = frictionFactor(reynoldsNumber(airflow, diameter, density), `${roughness}/${diameter}`);
  return `IF(${airflow}=0,0,(${factor})*${velocityPressure(airflow, diameter, density)}/${diameter})`;
}
