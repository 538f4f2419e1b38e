import { type Elements, JUNCTION, LEAK_ONLY, OPEN_END, STILL } from "./elements";
import {
  AIRFLOW,
  ARRIVING,
  ARRIVING_OFFSET,
  ARRIVING_RATE,
  DEVICE,
  DOWN_RATE,
  END,
  EXPONENT,
  FIXED,
  HOSE,
  LEAK,
  LEAK_OFFSET,
  LEAK_RATE,
  LEAK_SHARE,
  PIPE,
  RESISTANCE,
  ROOT,
  SUCTION,
  VELOCITY,
  WIDTH,
} from "./rows";

/**
 * The network with all its losses quadratic, so that at its fan end Q = conductance sqrt(P): friction with the factor from which it
 * is carried, a device as at a usual airflow, what junctions lose left out, a leak by the suction alone. Such ducts in a row and
 * side by side add up exactly, so it is solved without a step.
 *
 * @param elements the network; the conductance of each run is left in its row for `startAt`
 * @param usual [m3/s] the airflow at which a device that is not quadratic is taken, above 0
 * @returns [m3/s / sqrt(Pa)] the conductance of the whole
 * @source house
 */
export function quadraticOf({ rows, order, down, fan, kind }: Elements, usual: number): number {
  let conductance = 0;
  for (let place = 0, at = 0; place < order.length; place++, at += WIDTH) {
    const what = kind[order[place]!]!;
    rows[at + AIRFLOW] = rows[at + ARRIVING] = rows[at + LEAK] = 0;
    rows[at + ARRIVING_OFFSET] = rows[at + LEAK_OFFSET] = 0;
    if (what === STILL) continue;
    if (what === OPEN_END) rows[at + ARRIVING_RATE] = 1 / Math.sqrt(rows[at + END]!);
    rows[at + LEAK_RATE] =
      what === LEAK_ONLY ? 1 / Math.sqrt(rows[at + END]!) : rows[at + LEAK_SHARE]! / Math.sqrt(rows[at + VELOCITY]!);
    const upstream = rows[at + ARRIVING_RATE]! + rows[at + LEAK_RATE]!;
    const device = rows[at + DEVICE]! > 0 ? rows[at + DEVICE]! * usual ** (rows[at + EXPONENT]! - 2) : 0;
    const resistance = rows[at + FIXED]! + firstFriction(rows, at + PIPE) + firstFriction(rows, at + HOSE) + device;
    conductance = upstream / Math.sqrt(1 + resistance * upstream * upstream);
    rows[at + DOWN_RATE] = conductance;
    const to = down[place]!;
    if (to !== fan && kind[order[to / WIDTH]!] === JUNCTION) rows[to + ARRIVING_RATE]! += conductance;
  }
  return conductance;
}

/** [Pa s2/m6] of a straight length. */
const firstFriction = (rows: Float64Array, from: number): number =>
  rows[from + RESISTANCE]! > 0 ? rows[from + RESISTANCE]! / (rows[from + ROOT]! * rows[from + ROOT]!) : 0;

/**
 * A first state: what flows in the quadratic network at a suction.
 *
 * @param elements as `quadraticOf` left them; the flow of every run is written there
 * @param suction [Pa] at the fan's inlet, above 0
 * @source house
 */
export function startAt({ rows, order, down, fan, kind }: Elements, suction: number): void {
  rows[fan + SUCTION] = suction;
  for (let place = order.length - 1; place >= 0; place--) {
    if (kind[order[place]!] === STILL) continue;
    const at = place * WIDTH;
    const airflow = rows[at + DOWN_RATE]! * Math.sqrt(rows[down[place]! + SUCTION]!);
    const root = airflow / (rows[at + ARRIVING_RATE]! + rows[at + LEAK_RATE]!);
    rows[at + SUCTION] = root * root;
    rows[at + ARRIVING] = rows[at + ARRIVING_RATE]! * root;
    rows[at + LEAK] = rows[at + LEAK_RATE]! * root;
    rows[at + AIRFLOW] = rows[at + ARRIVING]! + rows[at + LEAK]!;
    rows[at + ARRIVING_RATE] = rows[at + LEAK_RATE] = 0; // the sweeps add to the one, and set the other only where there is a leak
  }
}
