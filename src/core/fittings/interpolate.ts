export interface Point {
  readonly at: number;
  readonly value: number;
}

/**
 * Linear between the two points around `at`; undefined outside them or when `at` is not a number.
 *
 * @returns the value there, in the unit of the points
 * @source house
 */
export function interpolate(points: readonly Point[], at: number): number | undefined {
  let below: Point | undefined;
  let above: Point | undefined;
  for (const point of points) {
    if (point.at <= at && (below === undefined || point.at > below.at)) below = point;
    if (point.at >= at && (above === undefined || point.at < above.at)) above = point;
  }
  if (below === undefined || above === undefined) return undefined;
  if (below.at === above.at) return below.value;
  return below.value + ((at - below.at) / (above.at - below.at)) * (above.value - below.value);
}
