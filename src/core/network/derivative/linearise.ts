import { STANDARD_DENSITY } from "../../air/constants";
import { curveAt } from "../../fan/fanCurve";
import { elementsOf, JUNCTION, OPEN_END, STILL } from "../solve/elements";
import type { Solution } from "../solve/solveNetwork";
import type { System } from "./changed";
import { afterFanLoss, type LossChanges, suctionLoss } from "./lossChanges";

/**
 * The equations of a solved network made straight at its state, and eliminated along the tree: for small changes
 *
 *     open end    dS = cS dP + what is put in,   cS = S / (2 P)
 *     leak        dL = cL dP + cQ dQ + put in,   cL = L / (2 (P + p_v)), cQ = 2 r Q cL, p_v = r Q^2
 *     run         dQ = dS + dL,  dP = dP_down - slope dQ - put in
 *     fan         dP_down = fanSlope dQ + put in
 */
export interface Straight {
  readonly system: System;
  readonly solution: Solution;
  readonly kind: Uint8Array; // as the solver's elements have it
  readonly cut: Uint8Array; // likewise: 1 beyond a shut gate
  readonly perVelocity: Float64Array; // [Pa s2/m6] r
  readonly losses: readonly (LossChanges | null)[]; // null where no air moves
  readonly arrivingRate: Float64Array; // [m3/(s Pa)] dS / dP
  readonly leakByAirflow: Float64Array; // [-] cQ
  readonly rate: Float64Array; // [m3/(s Pa)] dQ / dP
  readonly rateDown: Float64Array; // [m3/(s Pa)] dQ / dP_down
  readonly fanSlope: number; // [Pa s/m3] of the fan's pressure less the losses after it
  readonly curve: { readonly pressure: number; readonly slope: number }; // of the fan alone, in this air
}

/**
 * Makes a solved network straight; cost grows linearly with its runs.
 *
 * @param system the network, its fan and its air
 * @param solution what SOLVE's core found for just these
 * @returns what `direction` needs
 * @source house definition, the network; Todini and Pilati's method makes the same equations straight
 */
export function linearise(system: System, solution: Solution): Straight {
  const { network, curve, surroundings } = system;
  const { runs, joining, order, last, discharge } = network;
  const { airflow, leak, suction, fanAirflow } = solution;
  const elements = elementsOf(network, surroundings);
  const { kind, cut, velocityResistance: perVelocity } = elements;
  const column = (): Float64Array => new Float64Array(runs.length);
  const [arrivingRate, leakByAirflow, rate, rateDown] = [column(), column(), column(), column()];
  const losses = new Array<LossChanges | null>(runs.length).fill(null);
  for (const index of order) {
    if (kind[index] === STILL) continue;
    const [q, l, p] = [airflow[index]!, leak[index]!, suction[index]!];
    losses[index] = suctionLoss(runs[index]!, q, surroundings);
    if (kind[index] === OPEN_END) arrivingRate[index] = (q - l) / (2 * p);
    if (kind[index] === JUNCTION) for (const other of joining[index]!) arrivingRate[index]! += rateDown[other]!;
    const leakRate = l > 0 ? l / (2 * (p + perVelocity[index]! * q * q)) : 0;
    leakByAirflow[index] = 2 * perVelocity[index]! * q * leakRate;
    rate[index] = (arrivingRate[index]! + leakRate) / (1 - leakByAirflow[index]);
    rateDown[index] = rate[index] / (1 + rate[index] * losses[index].byAirflow);
  }
  const thickness = surroundings.density / STANDARD_DENSITY;
  const at = curveAt(curve, fanAirflow);
  const fan = { pressure: at.pressure * thickness, slope: at.slope * thickness };
  let fanSlope = fan.slope;
  if (kind[last] !== STILL)
    for (const index of discharge) {
      const after = afterFanLoss(network, index, fanAirflow, surroundings);
      losses[index] = after;
      fanSlope -= after.byAirflow;
    }
  return {
    ...{ system, solution, kind, cut, perVelocity, losses },
    ...{ arrivingRate, leakByAirflow, rate, rateDown, fanSlope, curve: fan },
  };
}
