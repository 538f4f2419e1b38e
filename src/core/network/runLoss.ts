import { velocityPressure } from "../air/velocityPressure";
import { deviceAirFactor, deviceLoss } from "../devices/deviceLoss";
import { mitreInSlowAir } from "../fittings/slowAir";
import { frictionPerLength } from "../friction/frictionLoss";
import { reynoldsOf } from "../friction/reynoldsNumber";
import { sectionArea } from "../section/section";
import type { Run } from "./network";

export interface RunLoss {
  readonly velocity: number; // [m/s]
  readonly velocityPressure: number; // [Pa]
  readonly friction: number; // [Pa] pipe and hose
  readonly fittings: number; // [Pa]
  readonly device: number; // [Pa]
}

/**
 * What a run costs at an airflow: total pressure from its upstream to its downstream end, in its parts.
 *
 *     friction (pipe) + friction (hose) + (K + K_mitres (times in slow air - 1)) p_v + p0 (Q/Q0)^m (rho/rho standard)^(m - 1)
 *
 * @param run the run
 * @param airflow [m3/s] at least 0
 * @param hoseRoughness [m] of corrugated hose drawn out
 * @param density [kg/m3]
 * @returns [Pa] each part
 * @throws DomainError if a part is outside its range
 * @source ashrae2009si duct design chapter
 */
export function runLoss(run: Run, airflow: number, hoseRoughness: number, density: number): RunLoss {
  const velocity = airflow / sectionArea(run.diameter, null);
  const pressure = velocityPressure(velocity, density);
  const pipe = run.length === 0 ? 0 : run.length * frictionPerLength(airflow, run.diameter, run.roughness, density);
  const hoseWall = run.hoseRoughness ?? hoseRoughness;
  const hose =
    run.hoseLength === 0
      ? 0
      : run.hoseLength * run.hoseTimes * frictionPerLength(airflow, run.diameter, hoseWall, density);
  const slower =
    run.mitreCoefficient === 0
      ? 0
      : run.mitreCoefficient * (mitreInSlowAir(reynoldsOf(velocity, run.diameter, density)).times - 1);
  const { device } = run;
  return {
    velocity,
    velocityPressure: pressure,
    friction: pipe + hose,
    fittings: (run.coefficient + slower) * pressure,
    device:
      device === null
        ? 0
        : deviceAirFactor(density, device.exponent) *
          deviceLoss(airflow, device.ratedLoss, device.ratedAirflow, device.exponent),
  };
}
