import { claimBounds } from "../../reference/claimBounds";
import { meanVelocity, sectionArea } from "../section/section";
import { leastBestPower, tipPressure } from "./fanBounds";
import { grade, type Judged } from "./grade";
import { mostAirflow, type Passage } from "./passage";

/** Velocity [m/s] of a claimed airflow in an inlet or hose: physics forbids none, so it is doubted at most. */
export function judgeVelocity(airflow: number, diameter: number): Judged {
  const claimed = meanVelocity(airflow, sectionArea(diameter, null));
  const allowed = claimBounds.inletVelocity.value;
  return { claimed, allowed, verdict: grade(claimed, allowed, Infinity) };
}

/** Claimed airflow [m3/s] against what the claimed highest pressure can draw through a passage. */
export function judgePassage(airflow: number, pressure: number, passage: Passage): Judged {
  const allowed = mostAirflow(pressure, passage);
  return { claimed: airflow, allowed, verdict: grade(airflow, allowed, allowed) };
}

/** A free-air airflow [m3/s] as one on a system: always doubted, since a system leaves only a part of it. */
export function judgeSystemAirflow(airflow: number): Judged {
  const allowed = claimBounds.systemShareHigh.value * airflow;
  return { claimed: airflow, allowed, verdict: grade(airflow, allowed, Infinity) };
}

/** Air power [W] of the claimed airflow and pressure against the motor's. */
export function judgePower(airflow: number, pressure: number, motorPower: number): Judged {
  const claimed = leastBestPower(airflow, pressure);
  return {
    claimed,
    allowed: motorPower,
    verdict: grade(claimed, claimBounds.efficiency.value * motorPower, motorPower),
  };
}

/** Claimed pressure [Pa] against that of the tip speed. */
export function judgeTipPressure(pressure: number, impellerDiameter: number, speed: number, density: number): Judged {
  const allowed = tipPressure(impellerDiameter, speed, density);
  return { claimed: pressure, allowed, verdict: grade(pressure, claimBounds.tipPressure.value * allowed, allowed) };
}

/** Velocity [m/s] through a filter's face against what is reckoned for a shaken cloth: doubted at most. */
export function judgeFaceVelocity(airflow: number, filterArea: number, usual: number): Judged {
  const claimed = meanVelocity(airflow, filterArea);
  return { claimed, allowed: usual, verdict: grade(claimed, usual, Infinity) };
}
