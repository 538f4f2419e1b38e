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
  const count = straight.system.network.runs.length;
  const [wider, narrower] = [new Float64Array(count), new Float64Array(count)];
  for (const meeting of meetings) {
    lossesSized(straight, meeting, run, Math.exp(STEP), wider);
    lossesSized(straight, meeting, run, Math.exp(-STEP), narrower);
  }
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

/** What the legs of a junction lose at the airflows of the solution where a run's diameter has a factor, by run. [Pa] */
function lossesSized(
  { system: { network, surroundings }, solution }: Straight,
  { main, legs }: Meeting,
  run: number,
  factor: number,
  losses: Float64Array,
): void {
  const diameterOf = (one: number): number => network.runs[one]!.diameter * (one === run ? factor : 1);
  lossesInto(meetingOf(network.runs, main, legs, surroundings.density, diameterOf)!, solution.airflow, losses);
}
