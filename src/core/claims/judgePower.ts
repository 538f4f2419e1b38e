import { claimBounds } from "../../reference/claimBounds";
import { leastBestPower, leastPower } from "./fanBounds";
import { grade, type Judged } from "./grade";
import { supplyPower } from "./supply";

/** An airflow and the pressure at it. */
export interface RatedPoint {
  readonly airflow: number; // [m3/s]
  readonly pressure: number; // [Pa]
}

/** A supply as far as it is told. */
export interface Supply {
  readonly volts: number;
  readonly amps: number;
  readonly phases: 1 | 3 | null;
}

const overload = claimBounds.overload.value;

/**
 * Air power [W] of a rated point, or the shaft power behind it, against the motor's rating.
 *
 * @param efficiency of the fan as it is claimed; null where it is not
 * @param usual the efficiency above which the air power alone is doubted
 */
export function judgeRatedPower(point: RatedPoint, efficiency: number | null, motor: number, usual: number): Judged {
  const least = leastPower(point.airflow, point.pressure) / (efficiency ?? 1);
  const claimed = (point.airflow * point.pressure) / (efficiency ?? 1);
  const doubtedFrom = efficiency === null ? usual * motor : motor;
  const verdict = least > overload * motor ? "impossible" : grade(claimed, { doubtedFrom });
  return { claimed, allowed: motor, verdict };
}

/**
 * Air power [W] that a fan with these two ends of its curve makes somewhere between them, against the motor's. That the curve
 * bulges between its ends is usual and no law, so it is doubted at most.
 */
export function judgeCurvePower(airflow: number, pressure: number, motor: number, usual: number): Judged {
  const claimed = leastBestPower(airflow, pressure);
  return { claimed, allowed: motor, verdict: grade(claimed, { doubtedFrom: usual * motor }) };
}

/** A motor's power [W] against what its supply gives. Where the phases are not told, only what three of them forbid cannot be. */
export function judgeSupply(claimed: number, { volts, amps, phases }: Supply): Judged {
  const [low, high] = [supplyPower(volts, amps, phases ?? 1), supplyPower(volts, amps, phases ?? 3)];
  const share = claimBounds.motorShare.value;
  const bounds = { unknownFrom: share * low, doubtedFrom: share * high, impossibleFrom: overload * high };
  return { claimed, allowed: high, verdict: grade(claimed, bounds) };
}

/** A claimed efficiency [-] against all of the power, and against the best of its kind. */
export function judgeEfficiency(efficiency: number, usual: number): Judged {
  return { claimed: efficiency, allowed: 1, verdict: grade(efficiency, { doubtedFrom: usual, impossibleFrom: 1 }) };
}
