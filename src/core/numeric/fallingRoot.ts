const MOST_STEPS = 200;

/**
 * Where a continuous function falls through zero between two ends, to the last digit: Ridders' method, which keeps the
 * root bracketed and cannot run away.
 *
 * @param f positive or 0 at `low`, negative or 0 at `high`
 * @returns the argument of the root
 * @source ridders1979
 */
export function fallingRoot(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  for (let step = 0; step < MOST_STEPS && fb !== 0; step++) {
    const middle = (a + b) / 2;
    const fm = f(middle);
    if (middle <= a || middle >= b || fm === 0) return middle;
    const guess = middle + ((middle - a) * fm) / Math.sqrt(fm * fm - fa * fb);
    const x = guess > a && guess < b ? guess : middle;
    const fx = f(x);
    if (fx === 0) return x;
    const stops = [
      { x: a, f: fa },
      ...(middle < x
        ? [
            { x: middle, f: fm },
            { x, f: fx },
          ]
        : [
            { x, f: fx },
            { x: middle, f: fm },
          ]),
      { x: b, f: fb },
    ];
    const after = stops.findIndex((stop) => stop.f <= 0);
    const [left, right] = [stops[after - 1]!, stops[after]!];
    if (left.x === a && right.x === b) return x;
    [a, fa, b, fb] = [left.x, left.f, right.x, right.f];
  }
  return b;
}
