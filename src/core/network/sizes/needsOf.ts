import { cutOff, type Network } from "../network";
import type { SizeNeed } from "./sizeTask";

/**
 * What a set of open gates needs: at each open hood the air that it asks for, in each run that an open hood feeds the
 * velocity that its dust needs, and in those whose diameter is chosen no more than a greatest velocity.
 *
 * @param network the runs with their gates
 * @param scenario its place among the scenarios
 * @param slowest [m/s] by run; 0 where no dust can settle
 * @param times [-] how much more than that is asked for, 1 for no margin
 * @param fastest [m/s] by run, how fast the air may be there at most: that less the margin is asked for; Infinity for no such need
 * @returns the needs in the order of the flow
 * @source house
 */
export function needsOf(
  network: Network,
  scenario: number,
  slowest: readonly number[],
  times: number,
  fastest: readonly number[] = [],
): SizeNeed[] {
  const { runs, joining, order } = network;
  const cut = cutOff(network);
  const fed = new Array<boolean>(runs.length).fill(false);
  const needs: SizeNeed[] = [];
  for (const run of order) {
    const before = joining[run]!;
    const { gate, wantedAirflow } = runs[run]!;
    fed[run] = gate !== "shut" && (before.length === 0 || before.some((other) => fed[other]));
    if (!fed[run] || cut[run]) continue;
    if (before.length === 0 && wantedAirflow > 0)
      needs.push({ scenario, run, kind: "airflow", wanted: wantedAirflow * times });
    if (slowest[run]! > 0) needs.push({ scenario, run, kind: "velocity", wanted: slowest[run]! * times });
    const most = (fastest[run] ?? Infinity) / times;
    if (most < Infinity) needs.push({ scenario, run, kind: "not faster", wanted: most });
  }
  return needs;
}
