const MOST_STEPS = 200;
const SAME = 2 * Number.EPSILON; // relative: a bracket as narrow as this holds one number

/**
 * Where a continuous function falls through zero between two ends, to the last digit: Ridders' method, which keeps the
 * root bracketed and cannot run away.
 *
 * @param f positive or 0 at `low`, negative or 0 at `high`
 * @param low end of the bracket
 * @param high its other end
 * @returns the argument of the root
 * @source ridders1979
 */
export function fallingRoot(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  for (let step = 0; step < MOST_STEPS && fb !== 0; step++) {
    const middle = (a + b) / 2;
    const least = SAME * Math.max(Math.abs(a), Math.abs(b));
    if (b - a <= 2 * least) return middle;
    const fm = f(middle);
    if (fm === 0) return middle;
    const guess = middle + ((middle - a) * fm) / Math.sqrt(fm * fm - fa * fb);
    // A guess that falls on an end says that the root is there: one step inside, so that the bracket closes around it.
    const x = Number.isNaN(guess) ? middle : Math.min(Math.max(guess, a + least), b - least);
    const fx = f(x);
    if (fx === 0) return x;
    const [left, right] = middle < x ? [middle, x] : [x, middle];
    const [fLeft, fRight] = middle < x ? [fm, fx] : [fx, fm];
    if (fLeft <= 0) [b, fb] = [left, fLeft];
    else if (fRight <= 0) [a, fa, b, fb] = [left, fLeft, right, fRight];
    else [a, fa] = [right, fRight];
  }
  return b;
}

const FEW_STEPS = 12;

/**
 * The same where it is known about where the root lies: secants from there, and the safe way where they leave the bracket or
 * do not settle.
 *
 * @param f as for fallingRoot
 * @param low as for fallingRoot
 * @param high as for fallingRoot
 * @param guess where it may be, anywhere
 * @returns the argument of the root
 * @source house the secant method
 */
export function fallingRootNear(f: (x: number) => number, low: number, high: number, guess: number): number {
  let before = guess;
  let x = guess * (1 + 1e-4);
  if (!(before > low && x < high && before > 0)) return fallingRoot(f, low, high);
  let fBefore = f(before);
  for (let step = 0; step < FEW_STEPS; step++) {
    const fx = f(x);
    if (fx === 0) return x;
    const next = x - (fx * (x - before)) / (fx - fBefore);
    if (!(next > low && next < high)) break;
    if (Math.abs(next - x) <= SAME * next) return next;
    before = x;
    fBefore = fx;
    x = next;
  }
  return fallingRoot(f, low, high);
}
