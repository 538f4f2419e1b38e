import { type SolvePlace, SWEEPS } from "./solveNames";

/** By how much the last sweep's state misses a run's equations, each as it is defined: along the run, at its end, in its leak. [Pa] */
export function missedOf(place: SolvePlace, row: number): string {
  const at = place.cell;
  const [kind, end, share, perVelocity] = (["kind", "end", "share", "perVelocity"] as const).map((name) =>
    at(name, row),
  ) as [string, string, string, string];
  const [airflow, arriving, leak, suction, down] = (["airflow", "arriving", "leak", "suction", "down"] as const).map(
    (name) => at(`${name}${SWEEPS}`, row),
  ) as [string, string, string, string, string];
  const along = `ABS(${down}-${suction}-${at(`loss${SWEEPS + 1}`, row)}-${at(`joint${SWEEPS + 1}`, row)})`;
  const through = (flow: string): string => `ABS(${end}*${flow}*ABS(${flow})-${suction})`;
  const leaking = `ABS(${suction}+${perVelocity}*${airflow}^2-${perVelocity}/${share}^2*${leak}*ABS(${leak}))`;
  const beside = `IF(AND(${share}>0,${kind}<>3),${leaking},0)`;
  return `IF(${kind}=0,0,MAX(${along},IF(${kind}=2,${through(arriving)},0),IF(${kind}=3,${through(leak)},0),${beside}))`;
}
