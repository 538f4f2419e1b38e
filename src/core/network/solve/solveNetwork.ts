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
import { columnsOf } from "../../numeric/columns";
import { fallingRootNear } from "../../numeric/fallingRoot";
import type { Surroundings } from "../designPass";
import { dischargeLoss } from "../dischargeLoss";
import type { Network, Run } from "../network";
import { afterFan } from "./afterFan";
import { inFlowOrder } from "./inFlowOrder";
import { type Elements, elementsOf, setChangedRun, STILL } from "./elements";
import { type Residual, residualOf } from "./residual";
import { quadraticOf, startAt } from "./startFlow";
import { startNear } from "./startNear";
import { type Flow, newFlow, sweepToEnds, sweepToFan } from "./sweep";

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
const NEAR = 1e-7; // relative misfit from which one more step leads to the answer; a try that falls short costs a look at every equation
const TOLERANCE = 1e-13; // relative misfit at which the sweeps stop
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
export function solveNetwork(
  network: Network,
  curve: FanCurve,
  surroundings: Surroundings,
  near?: Pick<Solution, "airflow" | "leak">,
): Solution {
  const { sorted, places } = inFlowOrder(network);
  const system = systemOf(sorted, curve, surroundings);
  const solution = solveSystem(system, curve, near === undefined ? null : startNear(system.elements, places, near));
  if (near !== undefined && solution.status !== "converged") return solveNetwork(network, curve, surroundings);
  return inOrderOf(solution, places);
}

/**
 * The same for networks that differ from one in a single run: the columns are made once, and each answer is found from what
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
  near: Pick<Solution, "airflow" | "leak"> | null,
): (index: number, run: Run) => Solution {
  const { sorted, places } = inFlowOrder(network);
  const runs = [...sorted.runs];
  const system = systemOf({ ...sorted, runs }, curve, surroundings);
  const { elements } = system;
  const roots = [elements.pipes.root, elements.hoses.root];
  const flow = newFlow(runs.length); // one for all: each answer is copied out of it
  const solve = (): Solution =>
    solveSystem(system, curve, near === null ? null : startNear(elements, places, near, flow));
  const put = (place: number, run: Run): void => {
    const before = runs[place]!;
    runs[place] = run;
    setChangedRun(elements, system.network, place, before, surroundings);
  };
  if (near !== null) solve(); // friction as it is there, from which each is carried
  const settled = roots.map((root) => root.slice());
  return (index, run) => {
    const place = places.indexOf(index);
    const before = runs[place]!;
    try {
      put(place, run);
      const solution = solve();
      if (solution.status === "converged") return inOrderOf(solution, places);
    } finally {
      put(place, before);
      roots.forEach((root, of) => root.set(settled[of]!));
    }
    const all = [...network.runs];
    all[index] = run;
    return solveNetwork({ ...network, runs: all }, curve, surroundings);
  };
}

/** A solution of the network sorted along the flow, with its runs where they stood. */
function inOrderOf(solution: Solution, places: readonly number[]): Solution {
  const column = columnsOf(places.length, 3);
  const back = (sorted: Float64Array): Float64Array => {
    const original = column();
    for (let place = 0; place < sorted.length; place++) original[places[place]!] = sorted[place]!;
    return original;
  };
  const { airflow, leak, suction, worst } = solution;
  return {
    ...solution,
    worst: places[worst]!,
    airflow: back(airflow),
    leak: back(leak),
    suction: back(suction),
  };
}

function systemOf(network: Network, curve: FanCurve, surroundings: Surroundings): System {
  const thickness = surroundings.density / STANDARD_DENSITY;
  const shutOff = curveAt(curve, leastAirflow(curve)).pressure * thickness;
  return {
    network,
    elements: elementsOf(network, surroundings),
    surroundings,
    fan: (airflow) => curveAt(curve, airflow).pressure * thickness,
    discharge: (airflow) => lossAfterFan(network, airflow, surroundings),
    shutOff,
    least: SMALLEST_LOSS * shutOff,
  };
}

function solveSystem(system: System, curve: FanCurve, begin: Flow | null): Solution {
  if (system.elements.kind[system.network.last] === STILL) return closedSystem(system, curve);
  const flow = begin ?? firstState(system, curve);
  return hasRisingPart(curve) ? onHumpedCurve(system, curve, flow) : onFallingCurve(system, curve, flow);
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
function firstState({ elements, fan, network }: System, curve: FanCurve): Flow {
  const [least, most] = [leastAirflow(curve), mostAirflow(curve)];
  const quadratic = quadraticOf(elements, most / 2);
  const suctionFor = (airflow: number): number => (airflow / quadratic.conductance) ** 2;
  const after = afterFan(elements, network.discharge, most / 2, quadratic.flow.slope);
  const surplus = (airflow: number): number => fan(airflow) - after(airflow) - suctionFor(airflow);
  const meets = !hasRisingPart(curve) && surplus(least) > 0 && surplus(most) < 0;
  const airflow = meets ? fallingRootNear(surplus, least, most, most / 2) : most / 2;
  return startAt(elements, quadratic, suctionFor(airflow));
}

/** How the network, linear as a sweep leaves it, is closed at the fan. */
interface Closing {
  readonly suction: number; // [Pa] at the fan inlet
  readonly beyond: OutsideCurveError | null; // the curve's end was met instead of the system
}

const suctionFor = (flow: Flow, last: number, airflow: number): number =>
  (airflow - flow.byDown.offset[last]!) / flow.byDown.rate[last]!;

/** A falling curve meets the system once, so the fan closes every sweep. */
function onFallingCurve(system: System, curve: FanCurve, flow: Flow): Solution {
  const { elements, fan, network } = system;
  const { last, discharge } = network;
  const [least, most] = [leastAirflow(curve), mostAirflow(curve)];
  const onCurve = (state: Flow): number => Math.min(Math.max(state.airflow[last]!, least), most);
  const close = (state: Flow): Closing => {
    const after = afterFan(elements, discharge, Math.max(onCurve(state), SMALLEST_SHARE * most), state.slope);
    const available = (airflow: number): number => fan(airflow) - after(airflow);
    const surplus = (airflow: number): number => available(airflow) - suctionFor(state, last, airflow);
    if (surplus(most) > 0) return { suction: available(most), beyond: new OutsideCurveError(curve, Infinity) };
    if (surplus(least) < 0) return { suction: available(least), beyond: new OutsideCurveError(curve, 0) };
    const airflow = fallingRootNear(surplus, least, most, state.airflow[last]!);
    return { suction: suctionFor(state, last, airflow), beyond: null };
  };
  const holds = (state: Flow): number => fan(onCurve(state)) - system.discharge(onCurve(state));
  return solutionOf(system, flow, iterate(system, flow, { close, holds }), 1);
}

/** On a curve with a rising part the system is solved for one airflow after another, and the crossings are counted. */
function onHumpedCurve(system: System, curve: FanCurve, flow: Flow): Solution {
  const { network, fan, discharge } = system;
  const flowing = (airflow: number): Answer =>
    iterate(system, flow, {
      close: (state) => ({ suction: suctionFor(state, network.last, airflow), beyond: null }),
      holds: (_, suction) => suction,
    });
  const surplus = (airflow: number): number =>
    airflow === 0 ? fan(0) : fan(airflow) - flowing(airflow).suction - discharge(airflow);
  const { at, crossings, fromRest } = stableCrossing(curve, surplus);
  const answer = { ...flowing(at), ...misfitOf(system, flow, fan(at) - discharge(at)) };
  const solution = solutionOf(system, flow, answer, crossings);
  return { ...solution, fromRest: fromRest === at ? solution.fanAirflow : fromRest };
}

/** What stands at the fan's end of the network. */
interface FanEnd {
  readonly close: (flow: Flow) => Closing;
  readonly holds: (flow: Flow, suction: number) => number; // [Pa] what is held there at this airflow, by the laws themselves
}

interface Answer extends Residual {
  readonly iterations: number; // sweeps
  readonly suction: number; // [Pa] at the fan inlet
}

/**
 * Sweeps until the state meets its equations. A step of Newton's doubles the right digits, so one that begins near enough ends at
 * the answer, and only such a state is held against the equations themselves.
 */
function iterate(system: System, flow: Flow, { close, holds }: FanEnd): Answer {
  const { network, elements, least } = system;
  let [before, suction, stalled] = [Infinity, 0, 0];
  for (let iterations = 1; ; iterations++) {
    const missed = sweepToFan(elements, flow, least, suction);
    const velocityPressure = elements.velocityResistance[network.last]! * flow.airflow[network.last]! ** 2;
    const share = missed / (Math.abs(suction) + velocityPressure || 1);
    const closing = close(flow);
    suction = closing.suction;
    sweepToEnds(elements, flow, suction);
    if (!Number.isFinite(share)) return { residual: NaN, worst: network.last, iterations, suction };
    const isLast = iterations >= MOST_SWEEPS;
    if ((iterations === 1 || share > NEAR) && !isLast) continue; // of a first state only the airflows are known
    const misfit = misfitOf(system, flow, holds(flow, suction));
    const { residual } = misfit;
    if (residual >= before) stalled++;
    const settled = residual <= PROMISED && (residual <= TOLERANCE || stalled > 1); // at a kink of friction one step may stall
    if (settled && closing.beyond !== null) throw closing.beyond;
    if (settled || isLast) return { ...misfit, iterations, suction };
    before = residual;
  }
}

function misfitOf({ network, elements, surroundings }: System, flow: Flow, suctionAtFan: number): Residual {
  const stillAt = (index: number): boolean => elements.kind[index] === STILL;
  return residualOf(network, flow, stillAt, suctionAtFan, surroundings, elements);
}

function solutionOf({ network, fan }: System, flow: Flow, answer: Answer, crossings: number): Solution {
  const { iterations, residual, worst } = answer;
  const fanAirflow = flow.airflow[network.last]!;
  return {
    status: residual <= PROMISED ? "converged" : "not converged",
    iterations,
    residual,
    worst,
    airflow: flow.airflow,
    leak: flow.leak,
    suction: flow.suction,
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
