import { meetingLosses, meetingOf } from "../junction/meeting";
import type { Input } from "./inputs";
import type { Straight, StraightJunction } from "./linearise";
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
  if (kind !== "diameter" || junctionsOf(straight, run).length === 0) return NONE;
  const [wider, narrower] = [lossesSized(straight, run, Math.exp(STEP)), lossesSized(straight, run, Math.exp(-STEP))];
  return (index) => ((wider.get(index) ?? 0) - (narrower.get(index) ?? 0)) / (2 * STEP);
}

/**
 * The runs whose losses a run's diameter changes: its own, and those of all that meet where it joins or is joined.
 *
 * @returns their places
 * @source house
 */
export const touchedBySize = (straight: Straight, run: number): readonly number[] => [
  ...new Set([run, ...junctionsOf(straight, run).flatMap(({ meeting }) => meeting.legs)]),
];

/** The junctions in which a run is a leg or the main. */
const junctionsOf = ({ junctions, system }: Straight, run: number): StraightJunction[] =>
  [run, system.network.joins[run]!].flatMap((main) => junctions[main] ?? []);

/** What the legs of a run's junctions lose at the airflows of the solution where its diameter has a factor. [Pa] */
function lossesSized(straight: Straight, run: number, factor: number): Map<number, number> {
  const { network, surroundings } = straight.system;
  const runs = [...network.runs];
  runs[run] = { ...runs[run]!, diameter: runs[run]!.diameter * factor };
  const losses = new Map<number, number>();
  for (const { meeting } of junctionsOf(straight, run)) {
    const sized = meetingOf(runs, meeting.main, meeting.legs, surroundings.density)!;
    const { legs } = meetingLosses(sized, straight.solution.airflow);
    legs.forEach(({ loss }, place) => losses.set(meeting.legs[place]!, loss));
  }
  return losses;
}
