import type { Elements } from "./elements";
import { setLoss } from "./losses";
import { AIRFLOW, LOSS, SLOPE } from "./rows";

/**
 * What the runs after the fan lose, near one airflow: a quadratic through rest that has the value and the slope of their law there.
 *
 * @param elements the network
 * @param discharge the runs after the fan
 * @param near [m3/s] above 0
 * @returns [Pa] by airflow [m3/s], exact at `near` once the friction carried there has settled
 * @source house as dischargeLoss
 */
export function afterFan(
  { rows, starts }: Elements,
  discharge: readonly number[],
  near: number,
): (airflow: number) => number {
  let loss = 0;
  let slope = 0;
  for (const index of discharge) {
    const at = starts[index]!;
    rows[at + AIRFLOW] = near;
    setLoss(rows, at);
    loss += rows[at + LOSS]!;
    slope += rows[at + SLOPE]!;
  }
  const chord = loss / near;
  const bend = (slope - chord) / near;
  return (airflow) => airflow * (chord + bend * (airflow - near));
}
