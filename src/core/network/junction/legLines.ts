/**
 * One leg of a junction, made straight:
 *
 *     Q = offset + rate (P - J),  J = constant + byOwn Q + byMain Q_main + byPush push
 */
export interface StraightLeg {
  readonly offset: number; // [m3/s]
  readonly rate: number; // [m3/(s Pa)]
  readonly constant: number; // [Pa]
  readonly byOwn: number; // [Pa s/m3]
  readonly byMain: number; // [Pa s/m3]
  readonly byPush: number; // [-]
  readonly pushes: number; // [Pa s/m3] what the push gains with Q
}

/** Q = offset + rate P. */
export interface LegLine {
  offset: number; // [m3/s]
  rate: number; // [m3/(s Pa)]
}

/**
 * The airflow of each leg by the junction's suction P alone. What ties the legs together are two sums, the main's airflow and
 * the push, so two equations are solved whatever the number of legs.
 *
 *     Q_main = sum Q,  push = pushConstant + sum pushes Q
 *
 * @param legs those in which air flows
 * @param pushConstant [Pa]
 * @param lines where they are written; new ones when left out
 * @param count of legs, the first of the list; all when left out
 * @returns a line for each
 * @source house
 */
export function legLines(
  legs: readonly StraightLeg[],
  pushConstant: number,
  lines: readonly LegLine[] = legs.map(() => ({ offset: 0, rate: 0 })),
  count = legs.length,
): readonly LegLine[] {
  // The two equations: a main + b push = e + f P, c main + d push = g + h P.
  let a = 1;
  let b = 0;
  let c = 0;
  let d = 1;
  let e = 0;
  let f = 0;
  let g = pushConstant;
  let h = 0;
  for (let leg = 0; leg < count; leg++) {
    const { offset, rate, constant, byOwn, byMain, byPush, pushes } = legs[leg]!;
    const line = lines[leg]!;
    const share = 1 / (1 + rate * byOwn);
    const own = (line.rate = share * rate);
    const alone = (line.offset = share * (offset - rate * constant));
    const onMain = own * byMain;
    const onPush = own * byPush;
    a += onMain;
    b += onPush;
    c += pushes * onMain;
    d += pushes * onPush;
    e += alone;
    f += own;
    g += pushes * alone;
    h += pushes * own;
  }
  const determinant = a * d - b * c;
  const main = (e * d - b * g) / determinant;
  const push = (a * g - c * e) / determinant;
  const mainRate = (f * d - b * h) / determinant;
  const pushRate = (a * h - c * f) / determinant;
  for (let leg = 0; leg < count; leg++) {
    const { byMain, byPush } = legs[leg]!;
    const line = lines[leg]!;
    line.offset -= line.rate * (byMain * main + byPush * push);
    line.rate *= 1 - byMain * mainRate - byPush * pushRate;
  }
  return lines;
}

/**
 * The same transposed: what each leg's offset does to a sum of the offsets that `legLines` gives.
 *
 * @param legs as for legLines
 * @param weights of each offset in the sum
 * @returns the weight of each leg's own offset
 * @source house
 */
export function legWeights(legs: readonly StraightLeg[], weights: readonly number[]): number[] {
  let [a, b, c, d] = [1, 0, 0, 1]; // as above
  let [main, push] = [0, 0];
  legs.forEach(({ rate, byOwn, byMain, byPush, pushes }, leg) => {
    const own = rate / (1 + rate * byOwn);
    a += own * byMain;
    b += own * byPush;
    c += pushes * own * byMain;
    d += pushes * own * byPush;
    main += weights[leg]! * own * byMain;
    push += weights[leg]! * own * byPush;
  });
  const determinant = a * d - b * c;
  const [onMain, onPush] = [(main * d - push * c) / determinant, (push * a - main * b) / determinant];
  return legs.map(({ rate, byOwn, pushes }, leg) => (weights[leg]! - onMain - pushes * onPush) / (1 + rate * byOwn));
}
