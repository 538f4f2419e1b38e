import { type FanCurve, fanCurve } from "../../fan/fanCurve";
import type { Surroundings } from "../designPass";
import type { Network, Run } from "../network";
import type { Input, InputKind } from "./inputs";

/** A network on a fan in its air. */
export interface System {
  readonly network: Network;
  readonly curve: FanCurve;
  readonly surroundings: Surroundings;
}

/**
 * The same system with its inputs off by factors: an ordinary network and an ordinary curve.
 *
 * A fan's speed factor s carries each point of its curve to s times the airflow and s^2 times the pressure.
 *
 * @param system as the table and the curve say
 * @param inputs what is off
 * @param logarithms [-] of the factors, one for each input
 * @returns the system that has these factors
 * @source house
 */
export function changed(system: System, inputs: readonly Input[], logarithms: ArrayLike<number>): System {
  const factors = new Map<string, number>();
  inputs.forEach(({ kind, run }, index) => factors.set(`${kind} ${run}`, Math.exp(logarithms[index]!)));
  const factor = (kind: InputKind, run = -1): number => factors.get(`${kind} ${run}`) ?? 1;
  const { network, curve, surroundings } = system;
  const [speed, pressure] = [factor("fan speed"), factor("fan pressure")];
  return {
    network: {
      ...network,
      runs: network.runs.map((run, index): Run => ({
        ...run,
        length: run.length * factor("pipe"),
        hoseLength: run.hoseLength * factor("hose"),
        diameter: run.diameter * factor("diameter", index),
        coefficient: run.coefficient * factor("fittings", index),
        mitreCoefficient: run.mitreCoefficient * factor("fittings", index),
        exitCoefficient: run.exitCoefficient * factor("fittings", index),
        junctionFactor: run.junctionFactor * factor("junction", index),
        hood: factors.has(`entry ${index}`) ? (run.hood ?? surroundings.plainEnd) * factor("entry", index) : run.hood,
        leakArea: run.leakArea * factor("leak", index),
        device: run.device && { ...run.device, ratedLoss: run.device.ratedLoss * factor("device", index) },
      })),
    },
    curve: fanCurve(
      curve.points.map((point) => ({
        airflow: point.airflow * speed,
        pressure: point.pressure * pressure * speed * speed,
      })),
    ),
    surroundings: { ...surroundings, density: surroundings.density * factor("density") },
  };
}
