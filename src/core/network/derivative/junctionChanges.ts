import { meetingLosses, meetingsOf } from "../junction/meeting";
import type { Network } from "../network";
import type { Input } from "./inputs";
import type { Straight } from "./linearise";
import { STEP } from "./lossChanges";

const NONE = (): number => 0;

/**
 * What a factor puts into the losses of runs at the junctions that they join, while nothing flows otherwise.
 *
 * @param straight the solved network made straight
 * @param input the factor
 * @returns [Pa] by run and the factor's logarithm; exact but for a diameter, whose changes are central differences of the law
 * @source house
 */
export function atJunctions(straight: Straight, { kind, run }: Input): (run: number) => number {
  if (kind !== "junction" && kind !== "density" && kind !== "diameter") return NONE;
  const { network } = straight.system;
  if (straight.junctions.every((junction) => junction === null)) return NONE;
  if (kind === "junction") {
    const now = lossesOf(straight, network);
    return (index) => (index === run ? (now.get(index) ?? 0) : 0);
  }
  if (kind === "density") {
    const now = lossesOf(straight, network); // each goes with it as velocity pressures do
    return (index) => now.get(index) ?? 0;
  }
  const [wider, narrower] = [STEP, -STEP].map((step) => {
    const sized = network.runs.map((one, index) =>
      index === run ? { ...one, diameter: one.diameter * Math.exp(step) } : one,
    );
    return lossesOf(straight, { ...network, runs: sized });
  }) as [Map<number, number>, Map<number, number>];
  return (index) => ((wider.get(index) ?? 0) - (narrower.get(index) ?? 0)) / (2 * STEP);
}

/** The losses at junctions with these runs at the airflows of the solution. [Pa] */
function lossesOf({ system, solution, junctions }: Straight, network: Network): Map<number, number> {
  const meetings = meetingsOf(network, system.surroundings.density);
  return new Map(
    meetings.flatMap((meeting, main) => {
      if (meeting === null || junctions[main] === null) return [];
      const { legs } = meetingLosses(meeting, solution.airflow);
      return meeting.legs.map((leg, place): [number, number] => [leg, legs[place]!.loss]);
    }),
  );
}
