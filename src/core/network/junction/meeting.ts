import { type Junction, junctionOf, legLoss, type LegLoss, pushOf } from "../../fittings/junction";
import { sectionArea } from "../../section/section";
import type { Network } from "../network";

/** Runs that join another, at least one of them by a branch whose loss goes by the airflows. */
export interface Meeting {
  readonly main: number; // the run that they join
  readonly legs: readonly number[]; // the runs that join it
  readonly factors: readonly number[]; // [-] on the loss of each; 0 where it has none of this kind
  readonly junction: Junction;
}

/**
 * The junctions of a network at which losses go by airflows and areas. A run that names a branch joins at its angle, one that
 * names none goes straight on. Where a branch is plain its K goes by angle alone, so its own loss is none of these, but its air
 * still pushes at its angle. The main's airflow is what arrives: its own leak is not counted.
 *
 * @param network the tree
 * @param density [kg/m3]
 * @returns by the run that is joined; null where no branch goes by airflows
 * @source house
 */
export function meetingsOf({ runs, joining }: Network, density: number): (Meeting | null)[] {
  if (!runs.some(({ branch }) => branch?.plain === false)) return new Array<null>(runs.length).fill(null);
  return joining.map((legs, main) => (legs.length === 0 ? null : meetingOf(runs, main, legs, density)));
}

/**
 * One of them.
 *
 * @param runs of the network
 * @param main the run that is joined
 * @param legs the runs that join it
 * @param density [kg/m3]
 * @returns null where no branch goes by airflows
 * @source house
 */
export function meetingOf(
  runs: Network["runs"],
  main: number,
  legs: readonly number[],
  density: number,
): Meeting | null {
  if (!legs.some((leg) => runs[leg]!.branch?.plain === false)) return null;
  const factors = legs.map((leg) => (runs[leg]!.branch?.plain === true ? 0 : runs[leg]!.junctionFactor));
  return { main, legs, factors, junction: junctionAt(runs, main, legs, density) };
}

/**
 * The geometry of one.
 *
 * @param runs of the network
 * @param main the run that is joined
 * @param legs the runs that join it
 * @param density [kg/m3]
 * @param diameterOf [m] of a run, where it is asked about another than its own
 * @returns each leg's by its place
 * @source crane410 as junctionOf
 */
export function junctionAt(
  runs: Network["runs"],
  main: number,
  legs: readonly number[],
  density: number,
  diameterOf = (run: number): number => runs[run]!.diameter,
): Junction {
  const ducts = legs.map((leg) => ({
    area: sectionArea(diameterOf(leg), null),
    angle: runs[leg]!.branch?.angle ?? null,
  }));
  return junctionOf(sectionArea(diameterOf(main), null), ducts, density);
}

/** Every leg's loss at these airflows, by its place; and what all legs push. */
export interface MeetingLosses {
  readonly legs: readonly LegLoss[];
  readonly push: number; // [Pa]
  readonly main: number; // [m3/s] all that arrives
}

/**
 * What each leg of a junction loses.
 *
 * @param meeting the junction
 * @param airflows [m3/s] by run
 * @returns [Pa] with the slopes of each
 * @source crane410 as legLoss
 */
export function meetingLosses({ legs, factors, junction }: Meeting, airflows: ArrayLike<number>): MeetingLosses {
  const flows = legs.map((leg) => airflows[leg]!);
  const main = flows.reduce((sum, flow) => sum + flow, 0);
  const push = pushOf(junction, flows);
  const losses = flows.map((flow, place) => {
    const { loss, byOwn, byMain, byPush } = legLoss(junction, place, flow, main, push);
    const factor = factors[place]!;
    return { loss: factor * loss, byOwn: factor * byOwn, byMain: factor * byMain, byPush: factor * byPush };
  });
  return { legs: losses, push, main };
}

/**
 * What the junctions of a network take from each run that joins one.
 *
 * @param network the tree
 * @param airflows [m3/s] by run
 * @param meetings the junctions, as meetingsOf finds them
 * @param losses where they are written, by run; new when left out
 * @returns [Pa] by run, 0 for those without
 * @source crane410 as legLoss
 */
export function lossesAtJunctions(
  network: Network,
  airflows: ArrayLike<number>,
  meetings: readonly (Meeting | null)[],
  losses: Float64Array = new Float64Array(network.runs.length),
): Float64Array {
  losses.fill(0);
  for (const meeting of meetings) if (meeting !== null) lossesInto(meeting, airflows, losses);
  return losses;
}

/**
 * The same at one junction, written into the places of the runs that meet there; those of others stay as they are.
 *
 * @param meeting the junction
 * @param airflows [m3/s] of every run, by index; a leg that counts for nothing has 0
 * @param losses [Pa] by run
 * @source crane410 as meetingLosses
 */
export function lossesInto(
  { legs, factors, junction }: Meeting,
  airflows: ArrayLike<number>,
  losses: Float64Array,
): void {
  let main = 0;
  let push = 0;
  for (let place = 0; place < legs.length; place++) {
    const flow = airflows[legs[place]!]!;
    main += flow;
    push += junction.legs[place]!.momentum * Math.max(flow, 0) ** 2;
  }
  for (let place = 0; place < legs.length; place++) {
    const leg = legs[place]!;
    losses[leg] = factors[place]! * legLoss(junction, place, airflows[leg]!, main, push).loss;
  }
}

/**
 * The runs that go straight on where a branch joins whose loss goes by airflows.
 *
 * @returns their places
 * @source house
 */
export const straightRuns = (network: Network): ReadonlySet<number> =>
  new Set(meetingsOf(network, 1).flatMap((meeting) => meeting?.legs.filter((leg) => network.runs[leg]!.branch === null) ?? [])); // prettier-ignore
