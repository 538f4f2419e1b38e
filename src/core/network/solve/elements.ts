import { AIR_VISCOSITY } from "../../air/constants";
import { deviceAirFactor } from "../../devices/deviceLoss";
import { mitreInSlowAir } from "../../fittings/slowAir";
import { DISCHARGE_COEFFICIENT } from "../../leaks/openingLeak";
import { columnsOf } from "../../numeric/columns";
import { sectionArea } from "../../section/section";
import type { Surroundings } from "../designPass";
import type { LegLine, StraightLeg } from "../junction/legLines";
import { type Meeting, meetingsOf } from "../junction/meeting";
import { cutOff, type Network, type Run } from "../network";
import { carriedFriction, type Lengths, newLengths, setLength } from "./carriedFriction";

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
  readonly meetings: readonly (Meeting | null)[]; // by the run that others join
  readonly crossings: readonly (Crossing | null)[]; // the same as the sweeps cross them
  readonly meets: Uint8Array; // 1 where a run joins one of these
}

/** A junction on which the sweeps write: its legs in which air flows, made straight. */
export interface Crossing {
  readonly meeting: Meeting;
  readonly places: readonly number[]; // of these legs in the meeting
  readonly legs: readonly { -readonly [Key in keyof StraightLeg]: number }[];
  readonly lines: readonly LegLine[];
}

const SMALLEST_ENTRY = 1e-12; // [-] an entry without any loss would leave its airflow undetermined

/**
 * The runs of a network as columns of numbers.
 *
 * @returns a place in every column for each run
 * @source house
 */
export function elementsOf(network: Network, surroundings: Surroundings): Elements {
  const { runs, joining, order, discharge, outlet, exit } = network;
  const { density } = surroundings;
  const count = runs.length;
  const column = columnsOf(count, 8);
  const meetings = meetingsOf(network, density);
  const crossings = new Array<Crossing | null>(count).fill(null);
  const elements: Elements = {
    order: Int32Array.from(order),
    joins: Int32Array.from(network.joins),
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
    pipes: newLengths(count),
    hoses: newLengths(count),
    meetings,
    crossings,
    meets: new Uint8Array(count),
  };
  for (const meeting of meetings) if (meeting !== null) for (const leg of meeting.legs) elements.meets[leg] = 1;
  for (const index of order) {
    const run = runs[index]!;
    const [area, perVelocityPressure] = setRun(elements, index, run, surroundings);
    const share = (DISCHARGE_COEFFICIENT * run.leakArea) / area;
    elements.leakShare[index] = share;
    const open = run.gate !== "shut";
    const fed = open && isFed(joining[index]!, elements.kind);
    if (fed) elements.kind[index] = JUNCTION;
    else if (open && joining[index]!.length === 0) {
      elements.kind[index] = OPEN_END;
      elements.endResistance[index] = Math.max(run.hood ?? surroundings.plainEnd, SMALLEST_ENTRY) * perVelocityPressure;
    } else if (share > 0) {
      elements.kind[index] = LEAK_ONLY;
      // L = g A sqrt(2 P / rho) / sqrt(1 - g^2), solved for P
      elements.endResistance[index] = ((1 - share * share) * perVelocityPressure) / (share * share);
    }
  }
  for (const index of discharge) setRun(elements, index, runs[index]!, surroundings);
  if (exit >= 0) {
    // The air leaves with its own velocity pressure, against that of the outlet: see dischargeLoss.
    const leaving = (1 - runs[exit]!.exitCoefficient) * elements.velocityResistance[exit]!;
    elements.fixedResistance[exit]! += leaving - elements.velocityResistance[outlet]!;
  }
  const cut = cutOff(network);
  for (let index = 0; index < count; index++) {
    if (cut[index] !== true) continue;
    elements.cut[index] = 1;
    elements.kind[index] = STILL;
  }
  for (const meeting of meetings) if (meeting !== null) crossings[meeting.main] = crossingOf(meeting, elements.kind);
  return elements;
}

/** What a run loses at its airflow, into its place in the columns; gives its area and its velocity pressure by Q^2. */
function setRun(elements: Elements, index: number, run: Run, surroundings: Surroundings): [number, number] {
  const { density } = surroundings;
  const area = sectionArea(run.diameter, null);
  const perVelocityPressure = density / (2 * area * area);
  elements.velocityResistance[index] = perVelocityPressure;
  elements.fixedResistance[index] = run.coefficient * perVelocityPressure;
  elements.mitreResistance[index] = run.mitreCoefficient * perVelocityPressure;
  elements.reynoldsPerFlow[index] = (density * run.diameter) / (area * AIR_VISCOSITY);
  if (run.device !== null) {
    const { ratedLoss, ratedAirflow, exponent } = run.device;
    elements.deviceFactor[index] = (deviceAirFactor(density, exponent) * ratedLoss) / ratedAirflow ** exponent;
    elements.deviceExponent[index] = exponent;
  }
  setLength(elements.pipes, index, run.length, run.diameter, run.roughness, density);
  const hoseWall = run.hoseRoughness ?? surroundings.hoseRoughness;
  setLength(elements.hoses, index, run.hoseLength * run.hoseTimes, run.diameter, hoseWall, density);
  return [area, perVelocityPressure];
}

function isFed(joining: readonly number[], kind: Uint8Array): boolean {
  for (const other of joining) if (kind[other] !== STILL) return true;
  return false;
}

function crossingOf(meeting: Meeting, kind: Uint8Array): Crossing {
  const places = meeting.legs.flatMap((index, place) => (kind[index] === STILL ? [] : [place]));
  return {
    meeting,
    places,
    legs: places.map(() => ({ offset: 0, rate: 0, constant: 0, byOwn: 0, byMain: 0, byPush: 0, pushes: 0 })),
    lines: places.map(() => ({ offset: 0, rate: 0 })),
  };
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
