import { type Junction, legLoss, TURNS_FROM } from "../../fittings/junction";
import { junctionAt, type Meeting } from "../junction/meeting";
import type { Network } from "../network";
import type { Input } from "./inputs";
import type { Straight } from "./linearise";
import { STEP } from "./lossChanges";

/** What a factor puts into the junctions while nothing flows otherwise; what is not there it leaves alone. */
export interface JunctionChanges {
  readonly atJunction: ReadonlyMap<number, number>; // [Pa] by run that joins another, beside what the push does
  readonly pushes: ReadonlyMap<number, number>; // [Pa] what all push that join a run, by that run
}

/**
 * What a factor puts into the losses of runs at the junctions that they join. A diameter changes what all that meet there push, and beside
 * that the losses of few.
 *
 * @param straight the solved network made straight
 * @param input the factor
 * @returns [Pa] by the factor's logarithm; exact but for a diameter, whose changes are central differences of the law
 * @source house
 */
export function junctionChanges(straight: Straight, { kind, run }: Input): JunctionChanges {
  const [atJunction, pushes] = [new Map<number, number>(), new Map<number, number>()];
  const { system, solution, junctions } = straight;
  const { runs, joins } = system.network;
  if (kind === "junction") atJunction.set(run, straight.atJunction[run]!);
  if (kind === "density") straight.atJunction.forEach((loss, index) => atJunction.set(index, loss)); // as velocity pressures do
  for (const main of kind === "diameter" ? [run, joins[run]!] : []) {
    const there = junctions[main];
    if (!there) continue;
    const { meeting, carried, push } = there;
    const touched = touchedLegs(runs, meeting, run);
    const at = (factor: number): Junction =>
      junctionAt(runs, main, touched, system.surroundings.density, (one) => runs[one]!.diameter * (one === run ? factor : 1)); // prettier-ignore
    const [wider, narrower] = [at(Math.exp(STEP)), at(Math.exp(-STEP))];
    let change = 0;
    touched.forEach((leg, place) => {
      const flow = solution.airflow[leg]!;
      const lossIn = (one: Junction): number => legLoss(one, place, flow, carried, push).loss;
      atJunction.set(leg, (meeting.factors[meeting.legs.indexOf(leg)]! * (lossIn(wider) - lossIn(narrower))) / (2 * STEP)); // prettier-ignore
      change += (wider.legs[place]!.momentum - narrower.legs[place]!.momentum) * Math.max(flow, 0) ** 2;
    });
    pushes.set(main, change / (2 * STEP));
  }
  return { atJunction, pushes };
}

/**
 * The legs whose losses a run's diameter changes otherwise than by what all push: its own, and those that go straight on; all of them
 * where it is their main, goes straight on itself or a branch turns the air of those that do.
 */
const touchedLegs = (runs: Network["runs"], { main, legs }: Meeting, run: number): readonly number[] =>
  main === run || runs[run]!.branch === null || legs.some((leg) => (runs[leg]!.branch?.angle ?? 0) > TURNS_FROM)
    ? legs
    : legs.filter((leg) => leg === run || runs[leg]!.branch === null);
