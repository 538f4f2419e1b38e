import { STANDARD_DENSITY } from "../../air/constants";
import {
  type FanCurve,
  hasRisingPart,
  leastAirflow,
  mostAirflow,
  OutsideCurveError,
  readCurve,
} from "../../fan/fanCurve";
import { stableCrossing } from "../../fan/operatingPoint";
import { fallingRoot } from "../../numeric/fallingRoot";
import type { Surroundings } from "../designPass";
import type { Network } from "../network";
import { runLoss } from "../runLoss";
import { type Elements, elementsOf, STILL } from "./elements";
import { startFlow } from "./startFlow";
import { type Flow, type Misfit, sweepToEnds, sweepToFan } from "./sweep";

/** What really flows. Everything is SI. */
export interface Solution {
  readonly status: "converged" | "not converged";
  readonly iterations: number;
  readonly residual: number; // [-] largest misfit of an equation / largest pressure or airflow
  readonly worst: number; // run with the largest misfit
  readonly airflow: Float64Array; // [m3/s] per run, its own leak included
  readonly arriving: Float64Array; // [m3/s] without the own leak
  readonly suction: Float64Array; // [Pa] total-pressure deficit at the upstream end
  readonly fanAirflow: number; // [m3/s]
  readonly fanPressure: number; // [Pa] fan static pressure
  readonly crossings: number; // points at which fan and system meet; 1 on a falling curve
}

const MOST_SWEEPS = 200;
const TOLERANCE = 1e-11; // relative misfit at which the sweeps stop; the answer is promised to 1e-9

/** A Halley step triples the right digits: after a change this small, friction is exact to the last one. */
const SETTLED = 1e-6;

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
 * @returns the state with its residual; `status` says whether it converged
 * @throws OutsideCurveError if the fan would work beyond its curve
 * @source todiniPilati1988 the published relative for looped networks
 */
export function solveNetwork(network: Network, curve: FanCurve, surroundings: Surroundings): Solution {
  const elements = elementsOf(network, surroundings);
  const thickness = surroundings.density / STANDARD_DENSITY;
  const fan = (airflow: number): number => readCurve(curve, airflow).pressure * thickness;
  const pressure = fan(leastAirflow(curve));
  const discharge = (airflow: number): number => dischargeLoss(network, airflow, surroundings);
  if (elements.kind[network.last] === STILL) return closedSystem(network, elements, curve, pressure);
  const flow = startFlow(network, elements, mostAirflow(curve) / 2, pressure / 2);
  if (!hasRisingPart(curve)) {
    const meet = fallingFan(curve, (airflow) => fan(airflow) - discharge(airflow), network.last);
    const outcome = iterate(network, elements, flow, meet);
    return finish(network, flow, outcome, fan, discharge, 1);
  }
  const systemAt = (airflow: number): number => {
    iterate(network, elements, flow, (state) => ({
      airflow,
      suction: suctionFor(state, network.last, airflow),
      beyond: null,
    }));
    return flow.suction[network.last]! + flow.loss[network.last]! + discharge(airflow);
  };
  const { at, crossings } = stableCrossing(curve, (airflow) =>
    airflow === 0 ? fan(0) : fan(airflow) - systemAt(airflow),
  );
  const outcome = iterate(network, elements, flow, (state) => ({
    airflow: at,
    suction: suctionFor(state, network.last, at),
    beyond: null,
  }));
  return finish(network, flow, outcome, fan, discharge, crossings);
}

interface Meeting {
  readonly airflow: number; // [m3/s] at the fan
  readonly suction: number; // [Pa] at the fan inlet
  readonly beyond: OutsideCurveError | null; // the curve's end was met instead of the system
}

type Meet = (flow: Flow) => Meeting;

interface Outcome {
  readonly iterations: number;
  readonly residual: number;
  readonly misfit: Misfit;
}

const suctionFor = (flow: Flow, last: number, airflow: number): number =>
  (airflow - flow.offset[last]!) / flow.yield[last]!;

/** Where a falling fan curve, less the discharge side, meets the network as the sweep has it. */
function fallingFan(curve: FanCurve, available: (airflow: number) => number, last: number): Meet {
  const [least, most] = [leastAirflow(curve), mostAirflow(curve)];
  return (flow) => {
    const surplus = (airflow: number): number => available(airflow) - suctionFor(flow, last, airflow);
    if (surplus(most) > 0)
      return { airflow: most, suction: available(most), beyond: new OutsideCurveError(curve, Infinity) };
    if (surplus(least) < 0)
      return { airflow: least, suction: available(least), beyond: new OutsideCurveError(curve, 0) };
    const airflow = fallingRoot(surplus, least, most);
    return { airflow, suction: suctionFor(flow, last, airflow), beyond: null };
  };
}

function iterate(network: Network, elements: Elements, flow: Flow, meet: Meet): Outcome {
  let misfit = sweepToFan(network, elements, flow);
  let before = Infinity;
  for (let iterations = 1; ; iterations++) {
    const { suction, beyond } = meet(flow);
    sweepToEnds(network, elements, flow, suction);
    misfit = sweepToFan(network, elements, flow);
    const residual = Math.max(
      misfit.pressure / Math.max(suction, Number.MIN_VALUE),
      misfit.mass / Math.max(flow.airflow[network.last]!, Number.MIN_VALUE),
    );
    if (misfit.friction > SETTLED && iterations < MOST_SWEEPS) continue;
    // Below the tolerance one more sweep is taken while it still improves: Newton's last step costs little.
    const done = residual <= TOLERANCE || (residual <= 1e-9 && residual >= before);
    if (done && beyond !== null) throw beyond;
    if (done || iterations >= MOST_SWEEPS || !Number.isFinite(residual)) return { iterations, residual, misfit };
    before = residual;
  }
}

function finish(
  network: Network,
  flow: Flow,
  outcome: Outcome,
  fan: (airflow: number) => number,
  discharge: (airflow: number) => number,
  crossings: number,
): Solution {
  const fanAirflow = flow.airflow[network.last]!;
  const needed = flow.suction[network.last]! + flow.loss[network.last]! + discharge(fanAirflow);
  const fanPressure = fan(fanAirflow);
  const residual = Math.max(outcome.residual, Math.abs(needed / fanPressure - 1));
  return {
    status: residual <= 1e-9 ? "converged" : "not converged",
    iterations: outcome.iterations,
    residual,
    worst: outcome.misfit.worst,
    airflow: flow.airflow,
    arriving: flow.arriving,
    suction: flow.suction,
    fanAirflow,
    fanPressure,
    crossings,
  };
}

/** Every end shut and tight: no air moves, and the fan holds its shut-off pressure. */
function closedSystem(network: Network, elements: Elements, curve: FanCurve, pressure: number): Solution {
  if (leastAirflow(curve) > 0) throw new OutsideCurveError(curve, 0);
  const count = network.runs.length;
  const suction = Float64Array.from({ length: count }, (_, index) =>
    elements.cut[index] === 1 || network.runs[index]!.side === "discharge" ? 0 : pressure,
  );
  const none = new Float64Array(count);
  return {
    status: "converged", iterations: 0, residual: 0, worst: network.last,
    airflow: none, arriving: none, suction, fanAirflow: 0, fanPressure: pressure, crossings: 1,
  }; // prettier-ignore
}

const dischargeLoss = (network: Network, airflow: number, surroundings: Surroundings): number =>
  network.discharge.reduce((sum, index) => {
    const { friction, fittings, device } = runLoss(
      network.runs[index]!,
      airflow,
      surroundings.hoseRoughness,
      surroundings.density,
    );
    return sum + friction + fittings + device;
  }, 0);
