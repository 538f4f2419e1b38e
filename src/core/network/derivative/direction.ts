import { JUNCTION, OPEN_END, STILL } from "../solve/elements";
import { legLines } from "../junction/legLines";
import type { Input } from "./inputs";
import { atJunctions } from "./junctionChanges";
import { legsWith, type Straight } from "./linearise";
import type { LossChanges } from "./lossChanges";

/** By how much a state changes with the logarithm of one factor. */
export interface Direction {
  readonly airflow: Float64Array; // [m3/s] per run, its own leak included; runs after the fan stay at 0
  readonly leak: Float64Array; // [m3/s]
  readonly staticSuction: Float64Array; // [Pa] at the upstream end: total-pressure deficit and velocity pressure
  readonly velocity: Float64Array; // [m/s]
  readonly fanAirflow: number; // [m3/s]
  readonly fanPressure: number; // [Pa] fan static pressure
  readonly inletSuction: number; // [Pa] total-pressure deficit at the fan's inlet: its pressure less what the runs after it lose
}

/** What a factor puts into the equations while nothing flows otherwise. */
interface Put {
  readonly loss: (run: number) => number; // [Pa] of a suction run
  readonly ends: (run: number) => number; // logarithm of an open end's resistance
  readonly openings: (run: number) => number; // logarithm of a leak's area over its duct's
  readonly perVelocity: (run: number) => number; // logarithm of r, p_v = r Q^2
  readonly fan: number; // [Pa] of the fan's pressure
  readonly afterFan: number; // [Pa] of the losses after it
}

const NONE = (): number => 0;

/**
 * What one input's small change does to everything that flows: one walk to the fan and one back.
 *
 * @param straight the solved network made straight
 * @param input the factor
 * @returns the change of every answer by the factor's logarithm, exact
 * @source house implicit function theorem on the network's equations
 */
export function direction(straight: Straight, input: Input): Direction {
  const { system, solution, kind, perVelocity, losses, arrivingRate, leakByAirflow, rate, rateDown } = straight;
  const { runs, joining, joins, order, last } = system.network;
  const put = putBy(straight, input);
  const junctionPut = atJunctions(straight, input);
  const column = (): Float64Array => new Float64Array(runs.length);
  const [arriving, alone, aloneDown, across] = [column(), column(), column(), column()];
  const [airflow, suction, leak, staticSuction, velocity] = [column(), column(), column(), column(), column()];
  const answer = { airflow, leak, staticSuction, velocity };
  const fanPut = put.fan - put.afterFan;
  if (kind[last] === STILL) return { ...answer, fanAirflow: 0, fanPressure: put.fan, inletSuction: put.fan };
  for (const index of order) {
    if (kind[index] === STILL) continue;
    const [q, l] = [solution.airflow[index]!, solution.leak[index]!];
    const wider = put.perVelocity(index);
    if (kind[index] === OPEN_END) arriving[index] = (-(q - l) / 2) * (put.ends(index) + wider);
    const junction = straight.junctions[index]!;
    if (junction !== null) {
      const known = (run: number) => ({ offset: aloneDown[run]!, rate: across[run]!, constant: junctionPut(run) });
      legLines(legsWith(junction, known), 0).forEach(({ offset }, at) => {
        aloneDown[junction.meeting.legs[junction.places[at]!]!] = offset;
      });
    }
    if (kind[index] === JUNCTION) for (const other of joining[index]!) arriving[index]! += aloneDown[other]!;
    const byLeak = leakPut(straight, index, put.openings(index), wider);
    alone[index] = (arriving[index]! + byLeak) / (1 - leakByAirflow[index]!);
    const alongIt = 1 + rate[index]! * losses[index]!.byAirflow;
    across[index] = rate[index]! / alongIt;
    aloneDown[index] = (alone[index] - rate[index]! * put.loss(index)) / alongIt;
  }
  const fanAirflow = (aloneDown[last]! + rateDown[last]! * fanPut) / (1 - rateDown[last]! * straight.fanSlope);
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const to = joins[index]!;
    const down = to < 0 ? straight.fanSlope * fanAirflow + fanPut : suction[to]!;
    if (kind[index] === STILL) {
      suction[index] = straight.cut[index] === 1 ? 0 : down;
      staticSuction[index] = suction[index];
      continue;
    }
    const q = solution.airflow[index]!;
    airflow[index] = aloneDown[index]! + rateDown[index]! * down;
    const atJunction = to >= 0 && straight.junctions[to]! !== null;
    suction[index] = atJunction
      ? (airflow[index] - alone[index]!) / rate[index]!
      : down - losses[index]!.byAirflow * airflow[index] - put.loss(index);
    leak[index] = airflow[index] - arriving[index]! - arrivingRate[index]! * suction[index];
    const wider = put.perVelocity(index);
    staticSuction[index] = suction[index] + perVelocity[index]! * q * (2 * airflow[index] + q * wider);
    velocity[index] = velocityOf(straight, index, airflow[index], input);
  }
  const fanPressure = straight.curve.slope * fanAirflow + put.fan;
  const inletSuction = straight.fanSlope * fanAirflow + fanPut;
  return { ...answer, fanAirflow, fanPressure, inletSuction };
}

/** L^2 = g^2 (P / r + Q^2) at a fixed state, by the logarithms of g and r. */
function leakPut({ solution, perVelocity }: Straight, index: number, opening: number, wider: number): number {
  const [q, l, p] = [solution.airflow[index]!, solution.leak[index]!, solution.suction[index]!];
  if (l === 0) return 0;
  return l * opening - ((l / 2) * p * wider) / (p + perVelocity[index]! * q * q);
}

function velocityOf({ system, solution }: Straight, index: number, change: number, { kind, run }: Input): number {
  const area = (Math.PI / 4) * system.network.runs[index]!.diameter ** 2;
  const wider = kind === "diameter" && run === index ? 2 : 0;
  return (change - wider * solution.airflow[index]!) / area;
}

function putBy(straight: Straight, { kind, run }: Input): Put {
  const { system, losses, curve, solution } = straight;
  const { discharge } = system.network;
  const isAfter = run >= 0 && discharge.includes(run);
  const none: Put = { loss: NONE, ends: NONE, openings: NONE, perVelocity: NONE, fan: 0, afterFan: 0 };
  const ofAll = (key: keyof LossChanges): Pick<Put, "loss" | "afterFan"> => ({
    loss: (index) => losses[index]![key],
    afterFan: discharge.reduce((sum, index) => sum + (losses[index]?.[key] ?? 0), 0),
  });
  const ofOne = (key: keyof LossChanges): Pick<Put, "loss" | "afterFan"> => ({
    loss: (index) => (index === run ? losses[index]![key] : 0),
    afterFan: isAfter ? losses[run]![key] : 0,
  });
  const only = (value: number) => (index: number) => (index === run ? value : 0);
  switch (kind) {
    case "fan pressure":
      return { ...none, fan: curve.pressure };
    case "fan speed": // p = s^2 f(Q / s)
      return { ...none, fan: 2 * curve.pressure - solution.fanAirflow * curve.slope };
    case "pipe":
      return { ...none, ...ofAll("byPipe") };
    case "hose":
      return { ...none, ...ofAll("byHose") };
    case "density":
      return { ...none, ...ofAll("byDensity"), perVelocity: () => 1, fan: curve.pressure };
    case "fittings":
      return { ...none, ...ofOne("byFittings") };
    case "junction":
      return none; // all of it is among the losses at junctions
    case "device":
      return { ...none, ...ofOne("byDevice") };
    case "entry":
      return { ...none, ends: only(1) };
    case "leak":
      return { ...none, openings: only(1) };
    case "diameter":
      return { ...none, ...ofOne("byDiameter"), perVelocity: only(-4), openings: only(-2) };
  }
}
