import type { Branch } from "../fittings/joiningBranch";

/** Loss of a separator or filter in a run, as rated in standard air: p0 (Q/Q0)^m. */
export interface Device {
  readonly ratedLoss: number; // [Pa]
  readonly ratedAirflow: number; // [m3/s]
  readonly exponent: number; // [-]
}

/** One run of a duct system, as the network sees it. Everything is SI. */
export interface Run {
  readonly name: string;
  readonly label: string; // how a sentence names it: `run "saw" (row 5)`
  readonly to: string; // name of the run it joins, or "fan"; of a discharge run: another discharge run or the open air
  readonly side: "suction" | "discharge";
  readonly diameter: number; // [m]
  readonly length: number; // [m] of pipe
  readonly roughness: number; // [m] of the pipe
  readonly hoseLength: number; // [m] as it lies
  readonly hoseTimes: number; // [-] what it costs as it lies, over drawn out
  readonly hoseRoughness: number | null; // [m]; null: as corrugated hose has it
  readonly coefficient: number; // [-] sum of the run's fittings
  readonly mitreCoefficient: number; // [-] of which mitres, whose loss grows in slow air
  readonly exitCoefficient: number; // [-] of which one exit into the open or a box; 0 where none is named
  readonly branch: Branch | null; // null: it names none, or joins no run
  readonly junctionFactor: number; // [-] on what the junction that it joins costs it; 1 but where an input is off
  readonly hood: number | null; // [-] entry coefficient; null = names no hood
  readonly wantedAirflow: number; // [m3/s] at a hood; 0 = none asked for
  readonly gate: "open" | "shut" | "none";
  readonly leakArea: number; // [m2] effective, at the upstream end, in the gate's present state
  readonly device: Device | null;
}

/**
 * A run with some of its properties changed. Every run is laid out alike in memory, property after property: where each change gave
 * runs a layout of its own, what reads them all would have to look every property up.
 *
 * @param run as it is
 * @param change what is otherwise in the other
 * @returns the other; the run stays as it is
 * @source house
 */
export function runWith(run: Run, change: Partial<Run>): Run {
  const all = { ...run, ...change };
  return {
    name: all.name,
    label: all.label,
    to: all.to,
    side: all.side,
    diameter: all.diameter,
    length: all.length,
    roughness: all.roughness,
    hoseLength: all.hoseLength,
    hoseTimes: all.hoseTimes,
    hoseRoughness: all.hoseRoughness,
    coefficient: all.coefficient,
    mitreCoefficient: all.mitreCoefficient,
    exitCoefficient: all.exitCoefficient,
    branch: all.branch,
    junctionFactor: all.junctionFactor,
    hood: all.hood,
    wantedAirflow: all.wantedAirflow,
    gate: all.gate,
    leakArea: all.leakArea,
    device: all.device,
  };
}

/** The tree that the suction runs form, and the discharge runs after the fan. */
export interface Network {
  readonly runs: readonly Run[];
  readonly joins: readonly number[]; // index of the run that each run joins; -1 at the fan and on the discharge side
  readonly joining: readonly (readonly number[])[]; // indices of the runs that join each run
  readonly order: readonly number[]; // suction runs, every run after all that join it
  readonly last: number; // index of the run that ends at the fan
  readonly discharge: readonly number[];
  readonly outlet: number; // the discharge run that stands at the fan's outlet; -1 where there is none
  readonly exit: number; // the discharge run that the air leaves; -1 where there is none
}

/**
 * Which runs a shut gate further down cuts off from the fan.
 *
 * @returns true for each run that is cut off, in the order of the runs
 * @source house
 */
export function cutOff({ runs, joins, order }: Network): boolean[] {
  const cut = new Array<boolean>(runs.length).fill(false);
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const to = joins[index]!;
    cut[index] = to >= 0 && (cut[to]! || runs[to]!.gate === "shut");
  }
  return cut;
}
