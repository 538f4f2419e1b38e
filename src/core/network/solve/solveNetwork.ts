import { STANDARD_DENSITY } from "../../air/constants";
import {
  type FanCurve,
  hasRisingPart,
  leastAirflow,
  mostAirflow,
  OutsideCurveError,
  curveAt,
} from "../../fan/fanCurve";
import { stableCrossing } from "../../fan/operatingPoint";
import { fallingRootNear } from "../../numeric/fallingRoot";
import type { Surroundings } from "../designPass";
import { dischargeLoss } from "../dischargeLoss";
import type { Network, Run } from "../network";
import { afterFan } from "./afterFan";
import { type Elements, elementsOf, type Room, roomFor, setChangedRun, STILL } from "./elements";
import { type Residual, residualOf, type State } from "./residual";
import { AIRFLOW, ARRIVING, DOWN_OFFSET, DOWN_RATE, LEAK, SUCTION, VELOCITY, WIDTH } from "./rows";
import { quadraticOf, startAt } from "./startFlow";
import { type Near, startNear } from "./startNear";
import { setLoneLeaks, sweepToEnds, sweepToFan } from "./sweep";

/** What really flows. Everything is SI. */
export interface Solution {
  readonly status: "converged" | "not converged";
  readonly iterations: number;
  readonly residual: number; // [-] largest misfit of an equation / largest pressure or airflow
  readonly worst: number; // run with the largest misfit
  readonly airflow: Float64Array; // [m3/s] per run, its own leak included
  readonly leak: Float64Array; // [m3/s] per run, at its upstream end
  readonly suction: Float64Array; // [Pa] total-pressure deficit at the upstream end
  readonly fanAirflow: number; // [m3/s]
  readonly fanPressure: number; // [Pa] fan static pressure
  readonly fromRest: number; // [m3/s] airflow at which a fan that starts from rest stays: less, where two points are stable
  readonly crossings: number; // points at which fan and system meet; 1 on a falling curve
}

const MOST_SWEEPS = 200;
const NEAR_WITH_BRANCHES = 1e-7; // relative misfit from which one more step leads to the answer; a try that falls short costs a look at every equation
const TOLERANCE = 1e-13; // relative misfit at which the sweeps stop in a small network; the last digits of sums over many runs miss by more
const PROMISED = 1e-9; // relative misfit that an answer may have

/** Share of a fan's most airflow: less is as good as none. */
const SMALLEST_SHARE = 1e-6;

/** Share of the fan's pressure below which a quadratic law is treated as if it were straight. */
const SMALLEST_LOSS = 1e-18;

/**
 * What flows in a network with a fan: the airflow of every run and the suction at its upstream end.
 *
 * Newton's method on the whole tree: each sweep makes every equation linear, eliminates along the tree to the fan, meets
 * the fan curve there, and goes back. Cost grows linearly with the runs. Where the curve has a rising part all crossings
 * are found and the stable one is given.
 *
 * @param network the tree
 * @param curve fan static pressure at standard density; it goes with density
 * @param surroundings density and the table values of runs that name none
 * @param near what flows in nearly the same network: the sweeps begin there and are fewer
 * @returns the state with its residual; `status` says whether it converged
 * @throws OutsideCurveError if the fan would work beyond its curve
 * @source todiniPilati1988 the published relative for looped networks
 */
export function solveNetwork(network: Network, curve: FanCurve, surroundings: Surroundings, near?: Near): Solution {
  const room = spare !== null && spare.runs >= network.runs.length ? spare : roomFor(network.runs.length);
  spare = null;
  const solution = solveSystem(systemOf(network, curve, surroundings, room), curve, near ?? null);
  spare = room;
  return near === undefined || solution.status === "converged" ? solution : solveNetwork(network, curve, surroundings);
}

/** Of the network that was solved last: memory is dearer to ask for than to fill. */
let spare: Room | null = null;

/**
 * The same for networks that differ from one in a single run: the rows are made once, and each answer is found from what
 * flows in that one. A gate set, a size, a leak sealed; where each run goes stays as it is.
 *
 * @param network as it is
 * @param curve as for solveNetwork
 * @param surroundings as for solveNetwork
 * @param near what flows in the network as it is; null where that has no answer, and each is found by itself
 * @returns what flows with this run at this place; it fails as solveNetwork does
 * @source todiniPilati1988 as solveNetwork
 */
export function withOneRun(
  network: Network,
  curve: FanCurve,
  surroundings: Surroundings,
  near: Near | null,
): (index: number, run: Run) => Solution {
  const runs = [...network.runs];
  const system = systemOf({ ...network, runs }, curve, surroundings);
  const { elements } = system;
  const put = (index: number, run: Run): void => {
    const before = runs[index]!;
    runs[index] = run;
    setChangedRun(elements, system.network, index, before, surroundings);
  };
  if (near !== null) solveSystem(system, curve, near); // friction as it is there, from which each is carried
  const settled = elements.rows.slice();
  return (index, run) => {
    const before = runs[index]!;
    try {
      put(index, run);
      const solution = solveSystem(system, curve, near);
      if (solution.status === "converged") return solution;
    } finally {
      put(index, before);
      elements.rows.set(settled);
    }
    const all = [...network.runs];
    all[index] = run;
    return solveNetwork({ ...network, runs: all }, curve, surroundings);
  };
}

function systemOf(network: Network, curve: FanCurve, surroundings: Surroundings, room?: Room): System {
  const thickness = surroundings.density / STANDARD_DENSITY;
  const shutOff = curveAt(curve, leastAirflow(curve)).pressure * thickness;
  return {
    network,
    elements: elementsOf(network, surroundings, room),
    surroundings,
    fan: (airflow) => curveAt(curve, airflow).pressure * thickness,
    discharge: (airflow) => lossAfterFan(network, airflow, surroundings),
    shutOff,
    least: SMALLEST_LOSS * shutOff,
  };
}

function solveSystem(system: System, curve: FanCurve, near: Near | null): Solution {
  if (system.elements.kind[system.network.last] === STILL) return closedSystem(system, curve);
  if (near === null || !startNear(system.elements, near)) setFirstState(system, curve);
  return hasRisingPart(curve) ? onHumpedCurve(system, curve) : onFallingCurve(system, curve);
}

interface System {
  readonly network: Network;
  readonly elements: Elements;
  readonly surroundings: Surroundings;
  readonly fan: (airflow: number) => number; // [Pa] in this air
  readonly discharge: (airflow: number) => number; // [Pa] losses after the fan, against its static pressure
  readonly shutOff: number; // [Pa] what the fan holds at its curve's beginning
  readonly least: number; // [Pa] see sweepToFan
}

/** Where the fan would meet the network if all losses were quadratic; half of the most it gives where they do not meet. */
function setFirstState({ elements, fan, network }: System, curve: FanCurve): void {
  const [least, most] = [leastAirflow(curve), mostAirflow(curve)];
  const conductance = quadraticOf(elements, most / 2);
  const suctionFor = (airflow: number): number => (airflow / conductance) ** 2;
  const after = afterFan(elements, network.discharge, most / 2);
  const surplus = (airflow: number): number => fan(airflow) - after(airflow) - suctionFor(airflow);
  const meets = !hasRisingPart(curve) && surplus(least) > 0 && surplus(most) < 0;
  startAt(elements, suctionFor(meets ? fallingRootNear(surplus, least, most, most / 2) : most / 2));
}

/** How the network, linear as a sweep leaves it, is closed at the fan. */
interface Closing {
  readonly suction: number; // [Pa] at the fan inlet
  readonly beyond: OutsideCurveError | null; // the curve's end was met instead of the system
}

/** Where the row of the run at the fan begins: the last of the suction runs. */
const atFan = ({ elements }: System): number => (elements.order.length - 1) * WIDTH;

/** What the network asks for at the fan's inlet, linear as a sweep leaves it. */
function suctionAt(system: System): (airflow: number) => number {
  const { rows } = system.elements;
  const [offset, rate] = [rows[atFan(system) + DOWN_OFFSET]!, rows[atFan(system) + DOWN_RATE]!];
  return (airflow) => (airflow - offset) / rate;
}

/** A falling curve meets the system once, so the fan closes every sweep. */
function onFallingCurve(system: System, curve: FanCurve): Solution {
  const { elements, fan, network } = system;
  const [least, most] = [leastAirflow(curve), mostAirflow(curve)];
  const airflowNow = (): number => elements.rows[atFan(system) + AIRFLOW]!;
  const onCurve = (): number => Math.min(Math.max(airflowNow(), least), most);
  const close = (): Closing => {
    const after = afterFan(elements, network.discharge, Math.max(onCurve(), SMALLEST_SHARE * most));
    const suctionFor = suctionAt(system);
    const available = (airflow: number): number => fan(airflow) - after(airflow);
    const surplus = (airflow: number): number => available(airflow) - suctionFor(airflow);
    if (surplus(most) > 0) return { suction: available(most), beyond: new OutsideCurveError(curve, Infinity) };
    if (surplus(least) < 0) return { suction: available(least), beyond: new OutsideCurveError(curve, 0) };
    return { suction: suctionFor(fallingRootNear(surplus, least, most, airflowNow())), beyond: null };
  };
  const holds = (): number => fan(onCurve()) - system.discharge(onCurve());
  return solutionOf(system, iterate(system, { close, holds }), 1);
}

/** On a curve with a rising part the system is solved for one airflow after another, and the crossings are counted. */
function onHumpedCurve(system: System, curve: FanCurve): Solution {
  const { fan, discharge } = system;
  const flowing = (airflow: number): Answer =>
    iterate(system, {
      close: () => ({ suction: suctionAt(system)(airflow), beyond: null }),
      holds: (suction) => suction,
    });
  const surplus = (airflow: number): number =>
    airflow === 0 ? fan(0) : fan(airflow) - flowing(airflow).suction - discharge(airflow);
  const { at, crossings, fromRest } = stableCrossing(curve, surplus);
  const found = flowing(at);
  const answer = { ...found, misfit: misfitOf(system, found.state, fan(at) - discharge(at)) };
  const solution = solutionOf(system, answer, crossings);
  return { ...solution, fromRest: fromRest === at ? solution.fanAirflow : fromRest };
}

/** What stands at the fan's end of the network. */
interface FanEnd {
  readonly close: () => Closing;
  readonly holds: (suction: number) => number; // [Pa] what is held there at this airflow, by the laws themselves
}

interface Answer {
  readonly state: State;
  readonly misfit: Residual;
  readonly iterations: number; // sweeps
  readonly suction: number; // [Pa] at the fan inlet
}

/**
 * Sweeps until the state meets its equations. A step of Newton's doubles the right digits, so one that begins near enough ends at
 * the answer, and only such a state is held against the equations themselves.
 */
function iterate(system: System, { close, holds }: FanEnd): Answer {
  const { elements, least } = system;
  const { rows } = elements;
  const last = atFan(system);
  const enough = TOLERANCE * Math.sqrt(1 + elements.order.length / 10);
  // A step squares what the state misses; where losses go by what meets it leaves some hundred times that.
  const near = elements.crossing.legs.length > 0 ? NEAR_WITH_BRANCHES : Math.sqrt(enough);
  let [before, suction, stalled] = [Infinity, 0, 0];
  for (let iterations = 1; ; iterations++) {
    const missed = sweepToFan(elements, least, suction);
    const velocityPressure = rows[last + VELOCITY]! * rows[last + AIRFLOW]! ** 2;
    const share = missed / (Math.abs(suction) + velocityPressure || 1);
    const closing = close();
    suction = closing.suction;
    sweepToEnds(elements, suction);
    if (iterations === 1) setLoneLeaks(elements);
    const isLost = !Number.isFinite(share);
    const isLast = iterations >= MOST_SWEEPS;
    if ((iterations === 1 || share > near) && !isLast && !isLost) continue; // of a first state only the airflows are known
    const state = stateOf(system);
    if (isLost) return { state, misfit: { residual: NaN, worst: system.network.last }, iterations, suction };
    const misfit = misfitOf(system, state, holds(suction));
    const { residual } = misfit;
    if (residual >= before) stalled++;
    const settled = residual <= PROMISED && (residual <= enough || stalled > 1); // at a kink of friction one step may stall
    if (settled && closing.beyond !== null) throw closing.beyond;
    if (settled || isLast) return { state, misfit, iterations, suction };
    before = residual;
  }
}

/** The state as it stands in the rows, by run. */
function stateOf({ network, elements }: System): State {
  const { rows, order } = elements;
  const count = network.runs.length;
  const all = new Float64Array(3 * count); // one piece of memory is sooner had than three
  const airflow = all.subarray(0, count);
  const leak = all.subarray(count, 2 * count);
  const suction = all.subarray(2 * count);
  const { arriving } = elements;
  for (let place = 0, at = 0; place < order.length; place++, at += WIDTH) {
    const index = order[place]!;
    airflow[index] = rows[at + AIRFLOW]!;
    arriving[index] = rows[at + ARRIVING]!;
    leak[index] = rows[at + LEAK]!;
    suction[index] = rows[at + SUCTION]!;
  }
  return { airflow, arriving, leak, suction };
}

function misfitOf({ network, elements, surroundings }: System, state: State, suctionAtFan: number): Residual {
  const stillAt = (index: number): boolean => elements.kind[index] === STILL;
  return residualOf(network, state, stillAt, suctionAtFan, surroundings, elements);
}

function solutionOf({ network, fan }: System, answer: Answer, crossings: number): Solution {
  const { iterations } = answer;
  const { residual, worst } = answer.misfit;
  const { airflow, leak, suction } = answer.state;
  const fanAirflow = airflow[network.last]!;
  return {
    status: residual <= PROMISED ? "converged" : "not converged",
    iterations,
    residual,
    worst,
    airflow,
    leak,
    suction,
    fanAirflow,
    fanPressure: fan(fanAirflow),
    fromRest: fanAirflow,
    crossings,
  };
}

/** Every end shut and tight: no air moves, and the fan holds its shut-off pressure. */
function closedSystem({ network, elements, shutOff }: System, curve: FanCurve): Solution {
  if (leastAirflow(curve) > 0) throw new OutsideCurveError(curve, 0);
  const suction = Float64Array.from(network.runs, (run, index) =>
    elements.cut[index] === 1 || run.side === "discharge" ? 0 : shutOff,
  );
  const none = new Float64Array(network.runs.length);
  return {
    status: "converged",
    iterations: 0,
    residual: 0,
    worst: network.last,
    airflow: none,
    leak: none,
    suction,
    fanAirflow: 0,
    fanPressure: shutOff,
    fromRest: 0,
    crossings: 1,
  };
}

const lossAfterFan = (network: Network, airflow: number, surroundings: Surroundings): number =>
  network.discharge.reduce((sum, index) => {
    const { friction, fittings, device } = dischargeLoss(network, index, airflow, surroundings);
    return sum + friction + fittings + device;
  }, 0);
