import { type Elements, LEAK_ONLY, OPEN_END, STILL } from "./elements";
import {
  AIRFLOW,
  ARRIVING,
  ARRIVING_OFFSET,
  ARRIVING_RATE,
  LEAK,
  LEAK_OFFSET,
  LEAK_RATE,
  LEAK_SHARE,
  WIDTH,
} from "./rows";

/** What flows in a network of the same runs that is nearly this one. */
export interface Near {
  readonly airflow: Float64Array; // [m3/s] by run
  readonly leak: Float64Array; // [m3/s]
}

/**
 * A first state: what flows in a network of the same runs that is nearly this one. It only saves sweeps; the answer is the same.
 *
 * @param elements the network; the flow of every run is written there, suctions not set yet
 * @param near what flows in the other network
 * @returns whether it is one: false where a run would begin at rest and does not stay so
 * @source house
 */
export function startNear({ rows, order, kind }: Elements, near: Near): boolean {
  for (let place = 0, at = 0; place < order.length; place++, at += WIDTH) {
    const index = order[place]!;
    const what = kind[index]!;
    rows[at + ARRIVING_OFFSET] = rows[at + ARRIVING_RATE] = 0; // the sweeps add to it
    rows[at + LEAK_OFFSET] = rows[at + LEAK_RATE] = 0; // they set it only where there is a leak
    const isFlowing = what !== STILL;
    const leaks = isFlowing && rows[at + LEAK_SHARE]! > 0;
    const leak = leaks ? near.leak[index]! : 0;
    const arriving = isFlowing && what !== LEAK_ONLY ? near.airflow[index]! - near.leak[index]! : 0;
    rows[at + LEAK] = leak;
    rows[at + ARRIVING] = arriving;
    rows[at + AIRFLOW] = arriving + leak;
    if (!isFlowing) continue;
    const begins = arriving + leak > 0 && (what !== OPEN_END || arriving > 0);
    if (!begins || (leaks && !(leak > 0))) return false;
  }
  return true;
}
