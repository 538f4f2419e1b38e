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
  const { network, curve, surroundings } = system;
  const ones = new Float64Array(network.runs.length + 1).fill(1);
  const factors = new Map<InputKind, Float64Array>(); // by kind: what all runs share, then by run
  inputs.forEach(({ kind, run }, index) => {
    const column = factors.get(kind) ?? ones.slice();
    column[run + 1] = Math.exp(logarithms[index]!);
    factors.set(kind, column);
  });
  const shared = (kind: InputKind): number => factors.get(kind)?.[0] ?? 1;
  const own = (kind: InputKind): ((run: number) => number) => {
    const column = factors.get(kind) ?? ones;
    return (run) => column[run + 1]!;
  };
  const [speed, pressure, pipe, hose] = [shared("fan speed"), shared("fan pressure"), shared("pipe"), shared("hose")];
  const [diameter, fittings, junction] = [own("diameter"), own("fittings"), own("junction")];
  const [entry, leak, device] = [own("entry"), own("leak"), own("device")];
  return {
    network: {
      ...network,
      runs: network.runs.map((run, index): Run => ({
        ...run,
        length: run.length * pipe,
        hoseLength: run.hoseLength * hose,
        diameter: run.diameter * diameter(index),
        coefficient: run.coefficient * fittings(index),
        mitreCoefficient: run.mitreCoefficient * fittings(index),
        exitCoefficient: run.exitCoefficient * fittings(index),
        junctionFactor: run.junctionFactor * junction(index),
        hood: entry(index) === 1 ? run.hood : (run.hood ?? surroundings.plainEnd) * entry(index),
        leakArea: run.leakArea * leak(index),
        device: run.device && { ...run.device, ratedLoss: run.device.ratedLoss * device(index) },
      })),
    },
    curve: fanCurve(
      curve.points.map((point) => ({
        airflow: point.airflow * speed,
        pressure: point.pressure * pressure * speed * speed,
      })),
    ),
    surroundings: { ...surroundings, density: surroundings.density * shared("density") },
  };
}
