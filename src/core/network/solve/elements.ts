import { AIR_VISCOSITY } from "../../air/constants";
import { deviceAirFactor } from "../../devices/deviceLoss";
import { altshulRoot } from "../../friction/frictionFactor";
import type { LegLoss } from "../../fittings/junction";
import { DISCHARGE_COEFFICIENT } from "../../leaks/openingLeak";
import { sectionArea } from "../../section/section";
import type { Surroundings } from "../designPass";
import type { LegLine, StraightLeg } from "../junction/legLines";
import { type Meeting, meetingOf, meetingsOf } from "../junction/meeting";
import type { Network, Run } from "../network";
import {
  DEVICE,
  END,
  EXPONENT,
  FIXED,
  HOSE,
  LEAK_SHARE,
  MITRES,
  PIPE,
  RESISTANCE,
  REYNOLDS,
  ROOT,
  VELOCITY,
  WALL,
  WIDTH,
} from "./rows";

/** What stands at a run's upstream end. */
export const STILL = 0; // nothing can enter: no airflow
export const JUNCTION = 1; // other runs bring air
export const OPEN_END = 2; // a hood or pipe end
export const LEAK_ONLY = 3; // nothing but the run's own leak

/** A network as rows of numbers, ready for sweeps along the tree. */
export interface Elements {
  readonly rows: Float64Array; // a row of WIDTH numbers per run
  readonly starts: Int32Array; // by run: where its row begins
  readonly order: readonly number[]; // suction runs as their rows stand, every run after all that join it
  readonly down: Int32Array; // in that order: where the row begins of what each joins, a run or the fan
  readonly fan: number; // where the fan's row begins
  readonly kind: Uint8Array; // by run
  readonly shut: Uint8Array; // by run; 1 where its own gate is
  readonly cut: Uint8Array; // by run; 1 beyond a shut gate: still, and at the room's pressure
  readonly meetings: (Meeting | null)[]; // by the run that others join
  readonly crossing: Crossing; // one for all: each is left before the next is reached
  readonly meets: Uint8Array; // by run; 1 where it joins one of these
  readonly arriving: Float64Array; // by run; where a state is held against its equations, as the next
  readonly losses: Float64Array;
}

/** What the elements of networks of up to so many runs take of memory; it may serve one network after another. */
export interface Room {
  readonly runs: number;
  readonly rows: Float64Array;
  readonly starts: Int32Array;
  readonly down: Int32Array;
  readonly kind: Uint8Array;
  readonly shut: Uint8Array;
  readonly cut: Uint8Array;
  readonly meets: Uint8Array;
  readonly arriving: Float64Array;
  readonly losses: Float64Array;
}

/**
 * Memory for the elements of a network.
 *
 * @param runs how many it has at most
 * @returns what `elementsOf` fills
 * @source house
 */
export const roomFor = (runs: number): Room => ({
  runs,
  rows: new Float64Array((runs + 1) * WIDTH),
  starts: new Int32Array(runs),
  down: new Int32Array(runs),
  kind: new Uint8Array(runs),
  shut: new Uint8Array(runs),
  cut: new Uint8Array(runs),
  meets: new Uint8Array(runs),
  arriving: new Float64Array(runs),
  losses: new Float64Array(runs),
});

/** Where the sweeps write while they cross a junction: first those of its legs in which air flows, made straight. */
export interface Crossing {
  readonly legs: { -readonly [Key in keyof StraightLeg]: number }[]; // as many as any junction has
  readonly lines: LegLine[];
  readonly law: LegLoss;
}

const SMALLEST_ENTRY = 1e-12; // [-] an entry without any loss would leave its airflow undetermined
const FIRST_ROOT = 7; // 1/sqrt(f) of a workshop's duct, near enough
const USUAL_VELOCITY = 20; // [m/s] of a workshop's air, near enough

/**
 * The runs of a network as rows of numbers.
 *
 * @param network the tree
 * @param surroundings density and the table values of runs that name none
 * @param room that no other network uses any more; new when left out
 * @returns a row for each run
 * @source house
 */
export function elementsOf(
  network: Network,
  surroundings: Surroundings,
  room: Room = roomFor(network.runs.length),
): Elements {
  const { runs, order, joins, discharge } = network;
  const { rows, starts, down, kind, shut, cut, meets, arriving, losses } = room;
  const fan = runs.length * WIDTH;
  rows.fill(0, 0, fan + WIDTH);
  meets.fill(0, 0, runs.length);
  const meetings = meetingsOf(network, surroundings.density);
  const crossing = { legs: [], lines: [], law: { loss: 0, byOwn: 0, byMain: 0, byPush: 0 } };
  const elements = { rows, starts, order, down, fan, kind, shut, cut, meets, meetings, crossing, arriving, losses };
  for (let place = 0; place < order.length; place++) starts[order[place]!] = place * WIDTH;
  discharge.forEach((index, place) => (starts[index] = (order.length + place) * WIDTH));
  for (let place = 0; place < order.length; place++) {
    const to = joins[order[place]!]!;
    down[place] = to < 0 ? fan : starts[to]!;
  }
  for (const meeting of meetings) if (meeting !== null) setMeeting(elements, meeting.main, meeting, meeting.legs);
  for (let index = 0; index < runs.length; index++) setRun(elements, index, runs[index]!, surroundings);
  setOutlet(elements, network);
  setEnds(elements, network);
  return elements;
}

/**
 * Brings the rows up to date after one run of the network was put in another's place: its own numbers, the junctions that it
 * touches, and where air can enter. All other runs, and which joins which, are as they were.
 *
 * @param elements the rows, in which this is written
 * @param network with the new run in its place
 * @param index its place
 * @param before the run that stood there
 * @param surroundings as for `elementsOf`
 * @source house
 */
export function setChangedRun(
  elements: Elements,
  network: Network,
  index: number,
  before: Run,
  surroundings: Surroundings,
): void {
  const { runs, joins, joining, outlet, exit } = network;
  const run = runs[index]!;
  setRun(elements, index, run, surroundings);
  if (exit >= 0 && (index === exit || index === outlet)) {
    setRun(elements, exit, runs[exit]!, surroundings);
    setOutlet(elements, network);
  }
  const { diameter, branch, junctionFactor } = run;
  if (diameter !== before.diameter || branch !== before.branch || junctionFactor !== before.junctionFactor)
    for (const main of [index, joins[index]!]) {
      if (main < 0 || joining[main]!.length === 0) continue;
      setMeeting(elements, main, meetingOf(runs, main, joining[main]!, surroundings.density), joining[main]!);
    }
  setEnds(elements, network);
}

/** What a run loses at its airflow, and how its leak goes with it, into its row. */
function setRun({ rows, starts, shut, crossing }: Elements, index: number, run: Run, surroundings: Surroundings): void {
  const { density } = surroundings;
  const { device, diameter } = run;
  const at = starts[index]!;
  const area = sectionArea(diameter, null);
  const perVelocityPressure = density / (2 * area * area);
  rows[at + VELOCITY] = perVelocityPressure;
  rows[at + FIXED] = run.coefficient * perVelocityPressure;
  rows[at + MITRES] = run.mitreCoefficient * perVelocityPressure;
  rows[at + REYNOLDS] = (density * diameter) / (area * AIR_VISCOSITY);
  shut[index] = run.gate === "shut" ? 1 : 0;
  rows[at + END] = Math.max(run.hood ?? surroundings.plainEnd, SMALLEST_ENTRY) * perVelocityPressure;
  rows[at + LEAK_SHARE] = run.side === "discharge" ? 0 : (DISCHARGE_COEFFICIENT * run.leakArea) / area;
  rows[at + DEVICE] =
    device === null
      ? 0
      : (deviceAirFactor(density, device.exponent) * device.ratedLoss) / device.ratedAirflow ** device.exponent;
  rows[at + EXPONENT] = device?.exponent ?? 0;
  // Where losses go by what meets, more than one state may meet the equations, and where the sweeps begin decides which is found.
  const byAirflows = crossing.legs.length > 0;
  const atUsual = byAirflows ? 0 : rows[at + REYNOLDS]! * USUAL_VELOCITY * area;
  setLength(rows, at, PIPE, run.length / diameter, run.roughness / diameter, atUsual);
  const hoseWall = run.hoseRoughness ?? surroundings.hoseRoughness;
  setLength(rows, at, HOSE, (run.hoseLength * run.hoseTimes) / diameter, hoseWall / diameter, atUsual);
}

/** A straight length by its diameters and its wall; one of 0 costs nothing and is never visited. */
function setLength(
  rows: Float64Array,
  at: number,
  length: number,
  diameters: number,
  relativeRoughness: number,
  atUsual: number, // [-] Reynolds number at which its friction begins; 0: with one factor for all
): void {
  const from = at + length;
  rows[from + RESISTANCE] = diameters * rows[at + VELOCITY]!;
  if (diameters === 0) return;
  rows[from + WALL] = relativeRoughness / (3.7 * 2.51);
  if (rows[from + ROOT] !== 0) return; // one that was carried is nearer
  rows[from + ROOT] = atUsual === 0 ? FIRST_ROOT : altshulRoot(atUsual, relativeRoughness);
}

/** The air leaves with its own velocity pressure, against that of the outlet: see dischargeLoss. */
function setOutlet({ rows, starts }: Elements, { runs, outlet, exit }: Network): void {
  if (exit < 0) return;
  const leaving = (1 - runs[exit]!.exitCoefficient) * rows[starts[exit]! + VELOCITY]!;
  rows[starts[exit]! + FIXED]! += leaving - rows[starts[outlet]! + VELOCITY]!;
}

function setMeeting(elements: Elements, main: number, meeting: Meeting | null, legs: readonly number[]): void {
  elements.meetings[main] = meeting;
  const { crossing } = elements;
  while (crossing.legs.length < legs.length) {
    crossing.legs.push({ offset: 0, rate: 0, constant: 0, byOwn: 0, byMain: 0, byPush: 0, pushes: 0 });
    crossing.lines.push({ offset: 0, rate: 0 });
  }
  for (const leg of legs) elements.meets[leg] = meeting === null ? 0 : 1;
}

/** What stands at each upstream end, by the gates as they are; a lone leak takes the place of the entry in its row. */
function setEnds({ kind, shut, cut, rows }: Elements, { runs, joining, order, joins }: Network): void {
  kind.fill(STILL, 0, runs.length);
  for (let place = 0, at = 0; place < order.length; place++, at += WIDTH) {
    const index = order[place]!;
    const share = rows[at + LEAK_SHARE]!;
    const isFed = kind[index] === JUNCTION; // a run that joins it has marked it
    const isOpen = shut[index] === 0 && (isFed || joining[index]!.length === 0);
    if (isOpen) kind[index] = isFed ? JUNCTION : OPEN_END;
    else kind[index] = share > 0 ? LEAK_ONLY : STILL;
    // L = g A sqrt(2 P / rho) / sqrt(1 - g^2), solved for P
    if (kind[index] === LEAK_ONLY) rows[at + END] = ((1 - share * share) * rows[at + VELOCITY]!) / (share * share);
    const to = joins[index]!;
    if (to >= 0 && kind[index] !== STILL) kind[to] = JUNCTION;
  }
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const to = joins[index]!;
    cut[index] = to >= 0 && (cut[to] === 1 || shut[to] === 1) ? 1 : 0;
    if (cut[index] === 1) kind[index] = STILL;
  }
}
