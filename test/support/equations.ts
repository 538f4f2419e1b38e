import type { Run } from "../../src/core/network/network";
import type { Flows } from "./flows";
import { AIR } from "./runs";

/*
 * The network's equations, written out by hand once more for the tests, with nothing of the solver's: physics.md's laws of
 * friction, entry, leak and device, Colebrook-White by plain substitution.
 */
const VISCOSITY = 1.819e-5; // Pa s, ASHRAE, air at 70 °F

/** Darcy's f: 64/Re to Re 2000, Colebrook-White from 4000, a straight line between. */
function factor(reynolds: number, wall: number): number {
  if (reynolds <= 2000) return 64 / reynolds;
  if (reynolds < 4000) return 0.032 + ((factor(4000, wall) - 0.032) * (reynolds - 2000)) / 2000;
  let x = 6;
  for (let round = 0; round < 40; round++) x = -2 * Math.log10(wall / 3.7 + (2.51 * x) / reynolds);
  return x ** -2;
}

const area = ({ diameter }: Run): number => (Math.PI * diameter ** 2) / 4;
const velocityPressure = (run: Run, airflow: number): number => (AIR.density / 2) * (airflow / area(run)) ** 2;

/** A device is rated at 0.075 lb/ft3: turbulent losses (exponent 2) go with density, laminar ones (1) do not. */
const inThisAir = (exponent: number): number =>
  (AIR.density / ((0.075 * 0.45359237) / 0.3048 ** 3)) ** Math.min(Math.max(exponent - 1, 0), 1);

/** SMACNA 4th ed., Table A-7, as printed: what a mitre loses more in slow air, along lines between these Reynolds numbers. */
const SLOW_AIR = [
  [10_000, 1.4],
  [20_000, 1.26],
  [40_000, 1.14],
  [60_000, 1.09],
  [100_000, 1.04],
  [140_000, 1],
] as const;

function inSlowAir(reynolds: number): number {
  if (reynolds <= 10_000) return 1.4;
  const place = SLOW_AIR.findIndex(([at]) => at >= reynolds);
  if (place < 0) return 1;
  const [[below, more], [above, less]] = [SLOW_AIR[place - 1]!, SLOW_AIR[place]!];
  return (more * (above - reynolds) + less * (reynolds - below)) / (above - below);
}

/** What a run costs from end to end, against the flow's sense [Pa]. */
function lossByHand(run: Run, airflow: number): number {
  const flow = Math.abs(airflow);
  if (flow === 0) return 0;
  const pressure = velocityPressure(run, flow);
  const reynolds = (AIR.density * flow * run.diameter) / (area(run) * VISCOSITY);
  const straight = (length: number, wall: number): number =>
    length === 0 ? 0 : ((factor(reynolds, wall / run.diameter) * length) / run.diameter) * pressure;
  const { device } = run;
  const filter =
    device === null
      ? 0
      : device.ratedLoss * (flow / device.ratedAirflow) ** device.exponent * inThisAir(device.exponent);
  const loss =
    straight(run.length, run.roughness) +
    run.hoseTimes * straight(run.hoseLength, run.hoseRoughness ?? AIR.hoseRoughness);
  const fittings = run.coefficient - run.mitreCoefficient + run.mitreCoefficient * inSlowAir(reynolds);
  return Math.sign(airflow) * (loss + fittings * pressure + filter);
}

/**
 * What a junction takes from each run that joins it [Pa], in velocities: the balance of momentum in the main, air of runs
 * without a branch straight on, with the factor C of the printed set for a wide branch.
 */
function junctionByHand(main: Run, given: readonly Run[], airflows: readonly number[]): number[] {
  const legs = given.map((leg) => ({ ...leg, diameter: Math.min(leg.diameter, main.diameter) })); // a wider one narrows first
  if (!legs.some(({ branch }) => branch !== null && !branch.plain)) return legs.map(() => 0);
  const half = AIR.density / 2;
  const all = Math.max(0, airflows.reduce((sum, one) => sum + one, 0)); // prettier-ignore
  const speed = all / area(main);
  const [straight, bent] = [legs.filter(({ branch }) => branch === null), legs.filter(({ branch }) => branch !== null)];
  const straightArea = straight.reduce((sum, leg) => sum + area(leg), 0);
  const radians = (leg: Run): number => ((leg.branch?.angle ?? 0) * Math.PI) / 180;
  const push = legs.reduce((sum, leg, place) => {
    const own = Math.max(0, airflows[place]!) / area(leg);
    return sum + 2 * Math.cos(radians(leg)) * half * own ** 2 * (area(leg) / area(main));
  }, 0);
  // 1.55 y - y^2 in place of 2 y - y^2 at a right angle, along a line from 60 degrees; the mean of several branches by area.
  const spared = (angle: number): number => (0.45 * Math.min(Math.max(angle - 60, 0), 30)) / 30;
  const mean =
    bent.reduce((sum, leg) => sum + spared(leg.branch!.angle) * area(leg), 0) /
    bent.reduce((sum, leg) => sum + area(leg), 0);
  return legs.map((leg, place) => {
    if (leg.branch?.plain === true) return 0;
    const own = airflows[place]! / area(leg);
    const loss = half * speed ** 2 + half * own * Math.abs(own) - push;
    const share = all === 0 ? 0 : Math.min(Math.max(airflows[place]! / all, 0), 1);
    if (leg.branch === null) return loss - mean * half * (speed ** 2 - (speed * airflows[place]!) / area(main));
    const printed = area(leg) / area(main) <= 0.35 ? 1 : Math.max(0.9 * (1 - share), 0.55);
    const counts = Math.min(Math.max(1 - (area(main) - straightArea) / area(leg), 0), 1);
    return loss * (counts * printed + 1 - counts);
  });
}

export interface Misfits {
  readonly pressure: number; // largest of all laws, as a share of the largest pressure
  readonly airflow: number; // largest at all junctions, as a share of the largest airflow
}

/** How far an answer misses the equations, with the fan's pressure at its airflow given. Gates stand at ends only. */
export function misfitsOf({ network, of, fanAirflow }: Flows, fanPressure: number): Misfits {
  const { runs, joining, joins } = network;
  const state = runs.map(({ name }) => of(name));
  const discharge = runs.filter(({ side }) => side === "discharge");
  const inlet = fanPressure - discharge.reduce((sum, run) => sum + lossByHand(run, fanAirflow), 0);
  const [pressures, airflows]: [number[], number[]] = [[0], [0]];
  const junction = runs.map(() => 0);
  joining.forEach((legs, main) => {
    const flows = legs.map((leg) => state[leg]!.airflow);
    junctionByHand(runs[main]!, legs.map((leg) => runs[leg]!), flows).forEach((loss, place) => (junction[legs[place]!] = loss)); // prettier-ignore
  });
  runs.forEach((run, index) => {
    if (run.side === "discharge") return;
    const { airflow, leak, suction } = state[index]!;
    const down = joins[index]! < 0 ? inlet : state[joins[index]!]!.suction;
    const arriving = joining[index]!.reduce((sum, other) => sum + state[other]!.airflow, 0);
    const open = joining[index]!.length === 0 && run.gate !== "shut";
    if (airflow !== 0) pressures.push(suction + lossByHand(run, airflow) + junction[index]! - down);
    const entering = airflow - leak;
    const entry = Math.sign(entering) * (run.hood ?? AIR.plainEnd) * velocityPressure(run, entering);
    if (open) pressures.push(entry - suction);
    else airflows.push(airflow - leak - arriving);
    if (run.leakArea === 0) airflows.push(leak);
    else {
      const jet = leak / (0.6 * run.leakArea); // L = C_d A sqrt(2 S / rho) as a pressure
      pressures.push((AIR.density / 2) * jet * Math.abs(jet) - suction - velocityPressure(run, airflow));
    }
  });
  const most = (values: readonly number[]): number => values.reduce((top, value) => Math.max(top, Math.abs(value)), 0);
  const last = runs[network.last]!;
  return {
    pressure: most(pressures) / (fanPressure + velocityPressure(last, fanAirflow)),
    airflow: most(airflows) / fanAirflow,
  };
}
