import fc from "fast-check";
import { interpolate, type Point } from "../../../src/core/fittings/interpolate";

const line: readonly Point[] = [
  { at: 1, value: 10 },
  { at: 3, value: 20 },
  { at: 2, value: 40 },
];

describe("interpolate", () => {
  test.each([
    [1, 10],
    [2, 40],
    [3, 20],
    [1.5, 25], // halfway from 10 to 40
    [2.25, 35], // a quarter of the way from 40 to 20
  ])("at %d, of points in any order, is %d", (at, value) => {
    expect(interpolate(line, at)).toBe(value);
  });

  test.each([0.999, 3.001, NaN, Infinity, -Infinity])("has nothing at %d, outside the points", (at) => {
    expect(interpolate(line, at)).toBeUndefined();
  });

  test("has nothing without points", () => {
    expect(interpolate([], 1)).toBeUndefined();
  });

  const point = fc.record({
    at: fc.integer({ min: -50, max: 50 }),
    value: fc.double({ min: -9, max: 9, noNaN: true }),
  });
  const points = fc.uniqueArray(point, { minLength: 1, maxLength: 8, selector: ({ at }) => at });

  test("returns every point itself", () => {
    fc.assert(fc.property(points, (given) => given.every(({ at, value }) => interpolate(given, at) === value)));
  });

  test("lies between the two points around it", () => {
    fc.assert(
      fc.property(points, fc.double({ min: 0, max: 1, noNaN: true }), (given, share) => {
        const sorted = [...given].sort((a, b) => a.at - b.at);
        sorted.slice(1).forEach((above, index) => {
          const below = sorted[index]!;
          const value = interpolate(given, below.at + share * (above.at - below.at))!;
          expect(value).toBeGreaterThanOrEqual(Math.min(below.value, above.value) - 1e-12);
          expect(value).toBeLessThanOrEqual(Math.max(below.value, above.value) + 1e-12);
        });
      }),
    );
  });
});
