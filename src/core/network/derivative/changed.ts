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
 * @returns by the logarithms of the factors, one for each input, the system that has these factors
 * @source house
 */
export function changing(system: System, inputs: readonly Input[]): (logarithms: ArrayLike<number>) => System {
  const { network, curve, surroundings } = system;
  const ones = new Float64Array(network.runs.length + 1).fill(1);
  const byKind = new Map<InputKind, Float64Array>(); // what all runs share, then by run
  for (const { kind } of inputs) if (!byKind.has(kind)) byKind.set(kind, ones.slice());
  const columns = inputs.map(({ kind }) => byKind.get(kind)!);
  const of = (kind: InputKind): Float64Array => byKind.get(kind) ?? ones;
  const [diameter, fittings, junction] = [of("diameter"), of("fittings"), of("junction")];
  const [entry, leak, device] = [of("entry"), of("leak"), of("device")];
  return (logarithms) => {
    inputs.forEach(({ run }, index) => (columns[index]![run + 1] = Math.exp(logarithms[index]!)));
    const [pipe, hose] = [of("pipe")[0]!, of("hose")[0]!];
    const [speed, pressure] = [of("fan speed")[0]!, of("fan pressure")[0]!];
    const runs = network.runs.map((run, index): Run => {
      const own = index + 1;
      const ofFittings = fittings[own]!;
      // Each property by its name: copied with a spread, a run takes longer than its whole loss does.
      return {
        name: run.name,
        label: run.label,
        to: run.to,
        side: run.side,
        diameter: run.diameter * diameter[own]!,
        length: run.length * pipe,
        roughness: run.roughness,
        hoseLength: run.hoseLength * hose,
        hoseTimes: run.hoseTimes,
        hoseRoughness: run.hoseRoughness,
        coefficient: run.coefficient * ofFittings,
        mitreCoefficient: run.mitreCoefficient * ofFittings,
        exitCoefficient: run.exitCoefficient * ofFittings,
        branch: run.branch,
        junctionFactor: run.junctionFactor * junction[own]!,
        hood: entry[own] === 1 ? run.hood : (run.hood ?? surroundings.plainEnd) * entry[own]!,
        wantedAirflow: run.wantedAirflow,
        gate: run.gate,
        leakArea: run.leakArea * leak[own]!,
        device: run.device && { ...run.device, ratedLoss: run.device.ratedLoss * device[own]! },
      };
    });
    const points = curve.points.map((point) => ({
      airflow: point.airflow * speed,
      pressure: point.pressure * pressure * speed * speed,
    }));
    return {
      network: { ...network, runs },
      curve: fanCurve(points),
      surroundings: { ...surroundings, density: surroundings.density * of("density")[0]! },
    };
  };
}
