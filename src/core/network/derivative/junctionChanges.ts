import { lossesInto, type Meeting, meetingOf } from "../junction/meeting";
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
  const { atJunction } = straight;
  if (kind === "junction") return (index) => (index === run ? atJunction[index]! : 0);
  if (kind === "density") return (index) => atJunction[index]!; // each goes with it as velocity pressures do
  const meetings = kind === "diameter" ? meetingsAt(straight, run) : [];
  if (meetings.length === 0) return NONE;
  const { system, solution } = straight;
  const { runs } = system.network;
  const [wider, narrower] = [Math.exp(STEP), Math.exp(-STEP)].map((factor) => {
    const losses = new Float64Array(runs.length); // [Pa] of the legs, at the airflows of the solution
    const diameterOf = (one: number): number => runs[one]!.diameter * (one === run ? factor : 1);
    for (const { main, legs } of meetings)
      lossesInto(meetingOf(runs, main, legs, system.surroundings.density, diameterOf)!, solution.airflow, losses);
    return losses;
  }) as [Float64Array, Float64Array];
  return (index) => (wider[index]! - narrower[index]!) / (2 * STEP);
}

/**
 * The runs whose losses a run's diameter changes: its own, and those of all that meet where it joins or is joined.
 *
 * @returns their places
 * @source house
 */
export function touchedBySize(straight: Straight, run: number): readonly number[] {
  const { junctions, system } = straight;
  const around = junctions[system.network.joins[run]!]?.meeting.legs ?? [run]; // it is one of them
  const legs = junctions[run]?.meeting.legs;
  return legs === undefined ? around : [...around, ...legs];
}

/** The junctions in which a run is a leg or the main. */
const meetingsAt = ({ junctions, system }: Straight, run: number): Meeting[] =>
  [run, system.network.joins[run]!].flatMap((main) => junctions[main]?.meeting ?? []);
