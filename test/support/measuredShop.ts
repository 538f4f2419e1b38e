import { fanCurve } from "../../src/core/fan/fanCurve";
import type { Model, State } from "../../src/core/network/calibration/model";
import { stateAt } from "../../src/core/network/calibration/model";
import { type Reading, said, type Spot } from "../../src/core/network/calibration/reading";
import { unknownsOf } from "../../src/core/network/calibration/unknowns";
import type { Network, Run } from "../../src/core/network/network";
import { buildNetwork } from "../../src/core/network/tree";
import { points } from "./flows";
import { lots } from "./lots";
import { AIR, makeRun } from "./runs";

/** How far off things are in the invented shop, as standard deviations of logarithms. */
export const PRIORS = new Map(
  Object.entries({ "fan pressure": 0.1, "fan speed": 0.1, hose: 0.4, pipe: 0.08, fittings: 0.15, entry: 0.2, device: 0.3, leak: Math.log(2.5), meter: 0.03 }), // prettier-ignore
);

export const HOODS = ["saw", "planer", "sander", "router"] as const;
const pipe = { roughness: 1.5e-4 };
const runs: readonly Run[] = [
  makeRun("saw", "north", { ...pipe, diameter: 0.1, length: 3, hoseLength: 1.2, coefficient: 0.5, hood: 0.9, gate: "open", leakArea: 2e-5 }),
  makeRun("planer", "north", { ...pipe, diameter: 0.125, length: 4, hoseLength: 1, coefficient: 0.7, hood: 0.5, gate: "open", leakArea: 3e-5 }),
  makeRun("sander", "south", { ...pipe, diameter: 0.15, length: 5, hoseLength: 0.8, coefficient: 0.6, hood: 0.6, gate: "open", leakArea: 4e-5 }),
  makeRun("router", "south", { ...pipe, diameter: 0.1, length: 2, hoseLength: 2, coefficient: 0.4, hood: 1.2, gate: "open", leakArea: 2e-5 }),
  makeRun("north", "trunk", { ...pipe, diameter: 0.15, length: 6, coefficient: 0.4 }),
  makeRun("south", "trunk", { ...pipe, diameter: 0.15, length: 4, coefficient: 0.4 }),
  makeRun("trunk", "separator", { ...pipe, diameter: 0.18, length: 5, coefficient: 0.6 }),
  makeRun("separator", "fan", { diameter: 0.18, leakArea: 1e-4, device: { ratedLoss: 500, ratedAirflow: 0.4, exponent: 2 } }),
  makeRun("filter", "", { ...pipe, side: "discharge", diameter: 0.2, length: 2, coefficient: 1, exitCoefficient: 1, device: { ratedLoss: 200, ratedAirflow: 0.4, exponent: 1 } }),
]; // prettier-ignore

const FAN = fanCurve(points([0, 2900], [0.2, 2800], [0.4, 2350], [0.6, 1500], [0.8, 400], [1.1, 0]));

/** The runs with only these gates open. */
const networkWith = (open: readonly string[]): Network =>
  buildNetwork(runs.map((run) => ({ ...run, gate: run.gate === "none" ? "none" : open.includes(run.name) ? "open" : "shut" }))); // prettier-ignore

/** Sets of open gates: each hood alone, then all of them. */
const SETS: readonly (readonly string[])[] = [...HOODS.map((hood) => [hood]), HOODS];
export const ALL = HOODS.length;

const systems = SETS.map((open) => ({ network: networkWith(open), curve: FAN, surroundings: AIR }));
export const model = (wander = 0.04, priors = PRIORS): Model => ({
  systems,
  wander,
  unknowns: unknownsOf(systems.map(({ network }) => network), priors, 1), // prettier-ignore
});

export const runNumber = (name: string): number => runs.findIndex((run) => run.name === name);

export const spot = (set: number, name: string, what: Spot["what"]): Spot => ({
  set,
  run: name === "fan" ? -1 : runNumber(name),
  what,
});
const alone = HOODS.map((hood, set) => spot(set, hood, "airflow"));
const together = HOODS.map((hood) => spot(ALL, hood, "airflow"));
const atFan = [spot(1, "fan", "suction"), spot(ALL, "fan", "suction")];

/** What somebody reads, the fewest first. */
export const PLANS: readonly (readonly Spot[])[] = [
  [alone[1]!, together[0]!],
  [alone[1]!, together[0]!, atFan[0]!],
  [...alone, atFan[0]!],
  [...alone, ...together],
  [...alone, ...together, ...atFan],
  [...alone, ...together, ...atFan, spot(ALL, "filter", "drop"), spot(ALL, "separator", "suction"), spot(ALL, "north", "suction"), spot(ALL, "south", "suction"), spot(1, "separator", "suction")],
]; // prettier-ignore

/** Every hood's air, alone and with all others. */
export const ANSWERS: readonly Spot[] = [...alone, ...together];

export const everySet = new Set(SETS.keys());

/** The shop as its table says, from which a fit begins. */
export const toldBy = (of: Model, sets: Iterable<number> = of.systems.keys()): State =>
  stateAt(of, new Float64Array(of.unknowns.length), new Set(sets));

/** Normal deviates from a seed, by Box and Muller. */
export function normals(seed: number): () => number {
  const random = lots(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** A reading of a spot: airflows are read with the one meter of the shop, pressures with none that matters. */
export const reading = (at: Spot, value: number, { unknowns }: Model, deviation = at.what === "airflow" ? 0.04 : 0.03): Reading => ({
  ...at,
  value,
  deviation,
  meter: at.what === "airflow" || at.what === "velocity" ? unknowns.findIndex(({ kind }) => kind === "meter") : -1,
}); // prettier-ignore

/** What the model says of spots when its factors have these logarithms. */
export function truly(of: Model, logarithms: Float64Array, spots: readonly Spot[]): number[] {
  const { sets } = stateAt(of, logarithms, new Set(spots.map(({ set }) => set)));
  return spots.map((at) => said(sets[at.set]!.system, sets[at.set]!.solution, at));
}

/** A shop that is off by lot, and what is read there. */
export function drawnShop(of: Model, plan: readonly Spot[], normal: () => number): { truth: Float64Array; readings: Reading[] } {
  const truth = Float64Array.from(of.unknowns, ({ deviation }) => deviation * normal());
  const readings = truly(of, truth, plan).map((value, index) => {
    const one = reading(plan[index]!, value, of);
    const meter = one.meter < 0 ? 0 : truth[one.meter]!;
    return { ...one, value: value * Math.exp(meter + Math.hypot(one.deviation, of.wander) * normal()) };
  });
  return { truth, readings };
} // prettier-ignore

/** Sets of readings of shops drawn so, each with one airflow off by a factor. */
export function spoiledShops(drawn: Model, factor: number, plan: number, shops: number): { wrong: Reading; readings: Reading[] }[] {
  const normal = normals(9);
  return Array.from({ length: shops }, (_, shop) => {
    const { readings } = drawnShop(drawn, PLANS[plan]!, normal);
    const airflows = readings.filter(({ what }) => what === "airflow");
    const bad = airflows[shop % airflows.length]!;
    const wrong: Reading = { ...bad, value: bad.value * factor };
    return { wrong, readings: readings.map((one) => (one === bad ? wrong : one)) };
  });
} // prettier-ignore
