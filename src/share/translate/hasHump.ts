import type { Argument } from "./translation";

/** Whether a curve as it stands now rises somewhere. */
export function hasHump({ value }: Argument): boolean {
  const points = value
    .flatMap(([airflow, pressure]) =>
      typeof airflow === "number" && typeof pressure === "number" ? [{ airflow, pressure }] : [],
    )
    .sort((one, other) => one.airflow - other.airflow);
  return points.some(({ pressure }, index) => index > 0 && pressure > points[index - 1]!.pressure);
}
