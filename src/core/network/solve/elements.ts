import { AIR_VISCOSITY } from "../../air/constants";
import { deviceAirFactor } from "../../devices/deviceLoss";
import { mitreInSlowAir } from "../../fittings/slowAir";
import { DISCHARGE_COEFFICIENT } from "../../leaks/openingLeak";
import { columnsOf } from "../../numeric/columns";
import { sectionArea } from "../../section/section";
import type { Surroundings } from "../designPass";
import type { LegLine, StraightLeg } from "../junction/legLines";
import { type Meeting, meetingOf, meetingsOf } from "../junction/meeting";
import type { Network, Run } from "../network";
import { carriedFriction, LENGTH_COLUMNS, type Lengths, newLengths, setLength } from "./carriedFriction";

/** What stands at a run's upstream end. */
export const STILL = 0; // nothing can enter: no airflow
export const JUNCTION = 1; // other runs bring air
export const OPEN_END = 2; // a hood or pipe end
export const LEAK_ONLY = 3; // nothing but the run's own leak

/** A network as columns of numbers, ready for sweeps along the tree. Everything is SI. */
export interface Elements {
  readonly order: Int32Array; // suction runs, every run after all that join it
  readonly joins: Int32Array; // the run that each run joins; -1 at the fan
  readonly kind: Uint8Array;
  readonly cut: Uint8Array; // 1 beyond a shut gate: still, and at the room's pressure
  readonly endResistance: Float64Array; // [Pa s2/m6] of an open end: P = R q^2; of a lone leak likewise
  readonly leakShare: Float64Array; // [-] g = C_d A_leak / A_duct; 0 = no leak
  readonly velocityResistance: Float64Array; // [Pa s2/m6] p_v = R Q^2
  readonly fixedResistance: Float64Array; // [Pa s2/m6] fittings: loss = R Q^2
  readonly mitreResistance: Float64Array; // [Pa s2/m6] of which mitres, whose loss grows in slow air
  readonly reynoldsPerFlow: Float64Array; // [s/m3]
  readonly deviceFactor: Float64Array; // [Pa (s/m3)^m]
  readonly deviceExponent: Float64Array;
  readonly pipes: Lengths;
  readonly hoses: Lengths;
  readonly meetings: (Meeting | null)[]; // by the run that others join
  readonly crossing: Crossing; // one for all: each is left before the next is reached
  readonly meets: Uint8Array; // 1 where a run joins one of these
}

/** Where the sweeps write while they cross a junction: first those of its legs in which air flows, made straight. */
export interface Crossing {
  readonly legs: readonly { -readonly [Key in keyof StraightLeg]: number }[]; // as many as any junction has
  readonly lines: readonly LegLine[];
}

function newCrossing(joining: Network["joining"]): Crossing {
  const legs: Crossing["legs"][number][] = [];
  const lines: LegLine[] = [];
  for (const { length } of joining)
    while (legs.length < length) {
      legs.push({ offset: 0, rate: 0, constant: 0, byOwn: 0, byMain: 0, byPush: 0, pushes: 0 });
      lines.push({ offset: 0, rate: 0 });
    }
  return { legs, lines };
}

const SMALLEST_ENTRY = 1e-12; // [-] an entry without any loss would leave its airflow undetermined

/**
 * The runs of a network as columns of numbers.
 *
 * @returns a place in every column for each run
 * @source house
 */
export function elementsOf(network: Network, surroundings: Surroundings): Elements {
  const count = network.runs.length;
  const column = columnsOf(count, 8 + 2 * LENGTH_COLUMNS);
  const meetings = meetingsOf(network, surroundings.density);
  // Where losses go by what meets, more than one state may meet the equations, and where the sweeps begin decides which is found.
  const byAirflows = meetings.some((meeting) => meeting !== null);
  const elements: Elements = {
    order: new Int32Array(network.order),
    joins: new Int32Array(network.joins),
    kind: new Uint8Array(count),
    cut: new Uint8Array(count),
    endResistance: column(),
    leakShare: column(),
    velocityResistance: column(),
    fixedResistance: column(),
    mitreResistance: column(),
    reynoldsPerFlow: column(),
    deviceFactor: column(),
    deviceExponent: column(),
    pipes: newLengths(count, byAirflows, column),
    hoses: newLengths(count, byAirflows, column),
    meetings,
    crossing: newCrossing(network.joining),
    meets: new Uint8Array(count),
  };
  for (const meeting of meetings) if (meeting !== null) setMeeting(elements, meeting.main, meeting, meeting.legs);
  network.runs.forEach((run, index) => setRun(elements, index, run, surroundings));
  setOutlet(elements, network);
  setEnds(elements, network, surroundings);
  return elements;
}

/**
 * Brings the columns up to date after one run of the network was put in another's place: its own numbers, the junctions that it
 * touches, and where air can enter. All other runs, and which joins which, are as they were.
 *
 * @param elements the columns, in which this is written
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
  setEnds(elements, network, surroundings);
}

/** What a run loses at its airflow, and how its leak goes with it, into its place in the columns. */
function setRun(elements: Elements, index: number, run: Run, surroundings: Surroundings): void {
  const { density } = surroundings;
  const { device } = run;
  const area = sectionArea(run.diameter, null);
  const perVelocityPressure = density / (2 * area * area);
  elements.velocityResistance[index] = perVelocityPressure;
  elements.fixedResistance[index] = run.coefficient * perVelocityPressure;
  elements.mitreResistance[index] = run.mitreCoefficient * perVelocityPressure;
  elements.reynoldsPerFlow[index] = (density * run.diameter) / (area * AIR_VISCOSITY);
  elements.leakShare[index] = run.side === "discharge" ? 0 : (DISCHARGE_COEFFICIENT * run.leakArea) / area;
  elements.deviceFactor[index] =
    device === null
      ? 0
      : (deviceAirFactor(density, device.exponent) * device.ratedLoss) / device.ratedAirflow ** device.exponent;
  elements.deviceExponent[index] = device === null ? 0 : device.exponent;
  setLength(elements.pipes, index, run.length, run.diameter, run.roughness, density);
  const hoseWall = run.hoseRoughness ?? surroundings.hoseRoughness;
  setLength(elements.hoses, index, run.hoseLength * run.hoseTimes, run.diameter, hoseWall, density);
}

/** The air leaves with its own velocity pressure, against that of the outlet: see dischargeLoss. */
function setOutlet({ fixedResistance, velocityResistance }: Elements, { runs, outlet, exit }: Network): void {
  if (exit < 0) return;
  const leaving = (1 - runs[exit]!.exitCoefficient) * velocityResistance[exit]!;
  fixedResistance[exit]! += leaving - velocityResistance[outlet]!;
}

function setMeeting(elements: Elements, main: number, meeting: Meeting | null, legs: readonly number[]): void {
  elements.meetings[main] = meeting;
  for (const leg of legs) elements.meets[leg] = meeting === null ? 0 : 1;
}

/** What stands at each upstream end, by the gates as they are. */
function setEnds(elements: Elements, { runs, joining, order, joins }: Network, surroundings: Surroundings): void {
  const { kind, cut, leakShare, velocityResistance, endResistance } = elements;
  for (const index of order) {
    const run = runs[index]!;
    const share = leakShare[index]!;
    const open = run.gate !== "shut";
    if (open && isFed(joining[index]!, kind)) kind[index] = JUNCTION;
    else if (open && joining[index]!.length === 0) {
      kind[index] = OPEN_END;
      endResistance[index] = Math.max(run.hood ?? surroundings.plainEnd, SMALLEST_ENTRY) * velocityResistance[index]!;
    } else if (share > 0) {
      kind[index] = LEAK_ONLY;
      // L = g A sqrt(2 P / rho) / sqrt(1 - g^2), solved for P
      endResistance[index] = ((1 - share * share) * velocityResistance[index]!) / (share * share);
    } else kind[index] = STILL;
  }
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const to = joins[index]!;
    const isCut = to >= 0 && (cut[to] === 1 || runs[to]!.gate === "shut");
    cut[index] = isCut ? 1 : 0;
    if (isCut) kind[index] = STILL;
  }
}

function isFed(joining: readonly number[], kind: Uint8Array): boolean {
  for (const other of joining) if (kind[other] !== STILL) return true;
  return false;
}

/**
 * Loss of a run's fittings [Pa] at an airflow of at least 0; the derivative [Pa s/m3] is put into `slopes`.
 *
 * @returns [Pa]
 * @source house
 */
export function fittingsHead(elements: Elements, index: number, flow: number, slopes: Float64Array): number {
  const fixed = elements.fixedResistance[index]! * flow;
  const mitres = elements.mitreResistance[index]!;
  if (mitres === 0) {
    slopes[index] = 2 * fixed;
    return fixed * flow;
  }
  const reynolds = elements.reynoldsPerFlow[index]! * flow;
  const slowAir = mitreInSlowAir(reynolds);
  slopes[index] = 2 * fixed + mitres * flow * (2 * (slowAir.times - 1) + reynolds * slowAir.slope);
  return fixed * flow + mitres * flow * flow * (slowAir.times - 1);
}

/**
 * Loss of a run at an airflow [Pa], with the flow's sign; the derivative [Pa s/m3] is put into `slopes`. A device with an
 * exponent below 1 puts its chord there instead.
 *
 * @returns [Pa]
 * @source house
 */
export function runHead(elements: Elements, index: number, airflow: number, slopes: Float64Array): number {
  const flow = Math.abs(airflow);
  let loss = fittingsHead(elements, index, flow, slopes);
  let slope = slopes[index]!;
  const factor = elements.deviceFactor[index]!;
  if (factor > 0 && flow > 0) {
    const exponent = elements.deviceExponent[index]!;
    const device = factor * flow ** exponent;
    loss += device;
    // Below an exponent of 1 Newton's step overshoots from one side of still air to the other; the chord does not.
    slope += (Math.max(exponent, 1) * device) / flow;
  }
  loss += carriedFriction(elements.pipes, index, flow);
  loss += carriedFriction(elements.hoses, index, flow);
  slopes[index] = slope + elements.pipes.slope[index]! + elements.hoses.slope[index]!;
  return airflow < 0 ? -loss : loss;
}
