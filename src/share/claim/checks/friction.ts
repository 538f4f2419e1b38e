import { AIR_VISCOSITY, STANDARD_DENSITY } from "../../../core/air/constants";
import { LAMINAR_END, LAMINAR_END_FACTOR, TURBULENT_START } from "../../../core/friction/flowRegime";
import { frictionFactor } from "../../../core/friction/frictionFactor";
import { haaland, newton } from "../../budget/frictionCells";
import { num } from "../../translate/expressions/text";
import type { Steps } from "../steps";

const density = num(STANDARD_DENSITY);
const PER_VELOCITY = num(STANDARD_DENSITY / AIR_VISCOSITY); // Reynolds number of a velocity in a metre's width
const BAND = TURBULENT_START - LAMINAR_END;
const laminar = num(LAMINAR_END_FACTOR);

/**
 * Friction of a straight pipe per length [Pa/m], in steps: the factor by Colebrook-White, by Hagen-Poiseuille in slow air, and the line between.
 *
 * @param wall roughness [m] as a formula; null for a smooth one
 */
export function frictionPerLength(steps: Steps, velocity: string, diameter: string, wall: string | null): string {
  const re = steps.step("Reynolds number", `${PER_VELOCITY}*${velocity}*${diameter}`);
  const turbulent = steps.step("if turbulent", `MAX(${re},${TURBULENT_START})`);
  const rough = wall === null ? "0" : `(${wall})/${diameter}/3.7`;
  const start = wall === null ? `(0-1.8)/LN(10)*LN(6.9/${turbulent})` : haaland(rough, turbulent);
  let x = steps.step("Haaland", start);
  for (let step = 1; step <= 3; step++) x = steps.step(`step ${step}`, newton(rough, turbulent, x));
  const between = `${laminar}+(${re}-${LAMINAR_END})/${BAND}*(1/${x}^2-${laminar})`;
  const factor = steps.step(
    "Friction factor",
    `IF(${re}<=${LAMINAR_END},64/${re},IF(${re}>=${TURBULENT_START},1/${x}^2,${between}))`,
  );
  return steps.step("Friction (Pa/m)", `${factor}/${diameter}*${density}*${velocity}^2/2`);
}

/** An end and a smooth pipe behind it, as formulas: [-], [m], [m]. */
interface SmoothPassage {
  readonly entry: string;
  readonly length: string;
  readonly diameter: string;
}

const NEWTON_STEPS = 6;
const SHEAR = num((2.51 * AIR_VISCOSITY) / STANDARD_DENSITY); // Colebrook-White of a smooth wall: V/s = -2 log10(SHEAR / (D s))
const TO_DECIMAL = "2/LN(10)";

/**
 * The velocity at which a smooth passage takes a whole pressure, 2p/rho = V² (K + f L/D). In turbulent air s = V sqrt(f) makes Colebrook-White
 * explicit, so that one unknown is left; in slow air it is a square's root, and between them a cubic's. The loss rises with the velocity, so
 * the one that lies in its own range is the answer.
 */
export function velocityThatTakes(steps: Steps, pressure: string, { entry, length, diameter }: SmoothPassage): string {
  const whole = steps.step("Twice the pressure over the density", `2*${pressure}/${density}`);
  const slender = steps.step("Length over diameter", `${length}/${diameter}`);
  let s = steps.step("Turbulent: start", `SQRT(${whole}/(49*${entry}+${slender}))`);
  const through = (at: string): string => `(0-${TO_DECIMAL})*LN(${SHEAR}/${diameter}/${at})`;
  for (let step = 1; step <= NEWTON_STEPS; step++) {
    const g = steps.step(`1/sqrt(f), ${step}`, through(s));
    const sum = `${entry}*${g}^2+${slender}`;
    s = steps.step(
      `step ${step}`,
      `MAX(${s}/4,${s}-(${s}^2*(${sum})-${whole})/(2*${s}*(${sum}+${entry}*${g}*${TO_DECIMAL})))`,
    );
  }
  const turbulent = steps.step("Velocity if turbulent (m/s)", `${s}*${through(s)}`);
  const shear = steps.step(
    "In layers: shear",
    `${num((64 * AIR_VISCOSITY) / STANDARD_DENSITY)}*${slender}/${diameter}`,
  );
  const slow = steps.step("Velocity if in layers (m/s)", `2*${whole}/(${shear}+SQRT(${shear}^2+4*${entry}*${whole}))`);
  const re = steps.step("Reynolds number of 1 m/s", `${PER_VELOCITY}*${diameter}`);
  const rise = frictionFactor(TURBULENT_START, 0) - LAMINAR_END_FACTOR;
  const still = steps.step(
    "Between: loss without its rise",
    `${entry}+${slender}*${num(LAMINAR_END_FACTOR - (rise * LAMINAR_END) / BAND)}`,
  );
  const rising = steps.step("its rise", `${slender}*${num(rise / BAND)}*${re}`);
  let v = steps.step("start", `${TURBULENT_START}/${re}`);
  for (let step = 1; step <= NEWTON_STEPS; step++)
    v = steps.step(
      `step ${step}`,
      `${v}-(${v}^2*(${still}+${rising}*${v})-${whole})/(2*${v}*${still}+3*${rising}*${v}^2)`,
    );
  return steps.step(
    "Velocity (m/s)",
    `IF(${turbulent}*${re}>=${TURBULENT_START},${turbulent},IF(${slow}*${re}<=${LAMINAR_END},${slow},${v}))`,
  );
}
