import { type Elements, runHead } from "./elements";

/**
 * What the runs after the fan lose, near one airflow: a quadratic through rest that has the value and the slope of their law there.
 *
 * @param elements the runs as columns
 * @param discharge the runs after the fan
 * @param near [m3/s] above 0
 * @param slopes a column to work in
 * @returns [Pa] by airflow [m3/s], exact at `near` once the friction carried there has settled
 * @source house as dischargeLoss
 */
export function afterFan(
  elements: Elements,
  discharge: readonly number[],
  near: number,
  slopes: Float64Array,
): (airflow: number) => number {
  let [loss, slope] = [0, 0];
  for (const index of discharge) {
    loss += runHead(elements, index, near, slopes);
    slope += slopes[index]!;
  }
  const chord = loss / near;
  const bend = (slope - chord) / near;
  return (airflow) => airflow * (chord + bend * (airflow - near));
}
