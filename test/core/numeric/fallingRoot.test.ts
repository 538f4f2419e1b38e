import fc from "fast-check";
import { fallingRoot, fallingRootNear } from "../../../src/core/numeric/fallingRoot";

describe("fallingRoot", () => {
  test.each<[string, (x: number) => number, number, number, number]>([
    ["a straight line", (x) => 3 - 2 * x, 0, 10, 1.5],
    ["the square root of 2", (x) => 2 - x * x, 0, 5, Math.SQRT2],
    ["cos x = x, 0.7390851332 (Dottie number)", (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ["a cube root, upright at its root", (x) => -Math.cbrt(x - 0.3), -1, 2, 0.3],
    ["a cube, flat at its root", (x) => -((x - 0.3) ** 3), -1, 2, 0.3],
    ["a step", (x) => (x < 0.7 ? 1 : -1), 0, 1, 0.7],
    ["ends of very different size", (x) => Math.exp(-x) - 1e-9, 0, 700, 9 * Math.LN10],
  ])("finds %s", (_, f, low, high, root) => {
    // the flat cube underflows to 0 within 1e-108 of its root, and its sign is right to about 1e-16
    expect(Math.abs(fallingRoot(f, low, high) - root)).toBeLessThan(1e-14 * Math.max(1, Math.abs(root)));
  });

  // Halving needs a place for each of 53 binary digits; Ridders doubles the right digits with every two (Ridders 1979).
  test.each<[string, (x: number) => number, number, number]>([
    ["a straight line", (x) => 3 - 2 * x, 0, 10],
    ["the square root of 2", (x) => 2 - x * x, 0, 5],
    ["cos x = x", (x) => Math.cos(x) - x, 0, 1],
    ["a square root between large numbers", (x) => 2e10 - x * x, 1e5, 3e5],
    // 1 beside 1e-20 is 1 to the last digit, so that the guess falls on the end with the small value
    ["a step close below the upper end", (x) => (x < 2 ? 1 : -1e-20), 1, 2],
    ["a step close above the lower end", (x) => (x > 1 ? -1 : 1e-20), 1, 2],
  ])("looks only between its ends, and in 20 places at most, for %s", (_, f, low, high) => {
    const asked: number[] = [];
    fallingRoot((x) => (asked.push(x), f(x)), low, high);
    expect(asked.length).toBeLessThanOrEqual(20);
    expect(Math.min(...asked)).toBe(low);
    expect(Math.max(...asked)).toBe(high);
  });

  // A step at 1e-300 above an end of 0: no width is small beside such numbers, so that narrowing alone would take hundreds of
  // steps. 200 steps of two places each, and the two ends, are the most.
  test("narrows in 200 steps at most", () => {
    let asked = 0;
    const root = fallingRoot((x) => (asked++, x < 1e-300 ? 1 : -1), 0, 1);
    expect(asked).toBeLessThanOrEqual(402);
    expect(Math.abs(root)).toBeLessThan(1e-14);
  });

  test("gives an end that is a root itself", () => {
    expect(fallingRoot((x) => -x, 0, 5)).toBe(0);
    expect(fallingRoot((x) => 5 - x, 0, 5)).toBe(5);
  });

  test("keeps the root bracketed: f is at least 0 a little below and at most 0 a little above, for any falling cubic", () => {
    const coefficient = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(coefficient, coefficient, fc.double({ min: 0.01, max: 1, noNaN: true }), (a, b, root) => {
        const f = (x: number) => a * (root ** 3 - x ** 3) + b * (root - x) + (root - x);
        const found = fallingRoot(f, 0, 2);
        expect(Math.abs(found - root)).toBeLessThan(1e-14);
      }),
    );
  });
});

describe("fallingRootNear", () => {
  // Guesses in the bracket, on its ends and outside of it.
  test.each<[string, (x: number) => number, number]>([
    ["a straight line", (x) => 3 - 2 * x, 1.5],
    ["the square root of 2", (x) => 2 - x * x, Math.SQRT2],
    ["cos x = x, 0.7390851332 (Dottie number)", (x) => Math.cos(x) - x, 0.7390851332151607],
    ["a step, on which no secant settles", (x) => (x < 0.7 ? 1 : -1), 0.7],
    ["a line that ends in a level stretch", (x) => (x < 0.5 ? 1 - 2 * x : 0), 0.5],
  ])("finds %s from wherever it is told to begin", (_, f, root) => {
    for (const guess of [root, 1.001 * root, 0.9 * root, 0.3, 2.9, 0, 3, -1, 50, NaN, Infinity]) {
      const found = fallingRootNear(f, 0, 3, guess);
      const isRoot = f(found) === 0 || Math.abs(found - root) < 1e-14;
      expect({ guess, found: isRoot }).toEqual({ guess, found: true });
    }
  });

  test("asks in few places where the guess is near", () => {
    let asked = 0;
    fallingRootNear((x) => (asked++, 2 - x * x), 0, 5, 1.41);
    expect(asked).toBeLessThanOrEqual(7);
  });
});
