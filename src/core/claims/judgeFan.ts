import { claimBounds } from "../../reference/claimBounds";
import { airflowAtCoefficient, airflowThroughRim, squeezedTipPressure, tipPressure } from "./fanBounds";
import { grade, type Judged } from "./grade";

/** A wheel as far as a data sheet describes it; null where it says nothing. */
export interface Wheel {
  readonly diameter: number; // [m]
  readonly speed: number; // [1/s] turns per second of the wheel itself
  readonly stages: number | null;
  readonly bounded: boolean | null; // whether a stage of its kind makes at most ρu²
}

/**
 * Claimed pressure [Pa] against that of the tip speed. Only a wheel whose kind and stages are known can be asked for too much:
 * one that leans forward, or a second one behind it, makes more.
 */
export function judgeTipPressure(pressure: number, wheel: Wheel, density: number): Judged {
  const { diameter, speed, bounded } = wheel;
  const stages = wheel.stages ?? 1;
  const allowed = stages * tipPressure(diameter, speed, density);
  const most = claimBounds.allowance.value * squeezedTipPressure(stages, diameter, speed, density);
  const doubted = claimBounds.tipPressure.value * allowed;
  const known = bounded === true && wheel.stages !== null;
  const verdict = grade(pressure, known ? { doubtedFrom: doubted, impossibleFrom: most } : { unknownFrom: doubted });
  return { claimed: pressure, allowed, verdict };
}

/** Usual highest flow coefficients: of the wheel's kind, or of the kinds that have the lowest and the highest. */
export interface FlowFigures {
  readonly low: number;
  readonly high: number;
}

/** Claimed airflow [m3/s] against what such a wheel usually moves with nothing on it: no law forbids more, so it is doubted at most. */
export function judgeWheelFlow(
  airflow: number,
  wheel: Wheel & { readonly width: number | null },
  figures: FlowFigures,
): Judged {
  const { diameter, speed, width } = wheel;
  const [low, high] = [figures.low, figures.high].map((figure) => airflowAtCoefficient(figure, diameter, speed)) as [
    number,
    number,
  ];
  const rim =
    width === null || wheel.bounded !== true
      ? Infinity
      : airflowThroughRim(claimBounds.rimFlow.value, diameter, width, speed);
  const [least, most] = [Math.min(low, rim), Math.min(high, rim)];
  return { claimed: airflow, allowed: most, verdict: grade(airflow, { unknownFrom: least, doubtedFrom: most }) };
}
