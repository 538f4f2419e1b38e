import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { airflowError } from "../../../src/core/measuring/airflowError";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const percents = fc.oneof(fc.constant(0), between(0.1, 20));
const parts = fc.tuple(between(0.1, 60), between(0.05, 1), percents, between(0, 2), between(0, 0.01));

/** Parts as small as the smallest numbers that a computer has (drawn once: 4e-323 m/s) are rounded by as much as they are. */
const NO_DIGITS = 1e-300; // m³/s

describe("airflowError", () => {
  // By hand: 20 m/s in 100 mm: 3 % is 0.6 m/s, the floor 0.2, 1 mm of 100 mm twice 1 % or 0.4; sqrt(0.36 + 0.04 + 0.16) =
  // 0.7483315 m/s through 0.007853982 m2 is 0.005877382 m3/s.
  test("adds the squares of three parts: 0.005877382 m³/s", () => {
    expect(relative(airflowError(20, 0.1, 3, 0.2, 0.001), 0.005877382)).toBeLessThan(1e-6);
  });

  test("of one part alone is that part", () => {
    const area = (Math.PI / 4) * 0.1 ** 2;
    expect(relative(airflowError(20, 0.1, 3, 0, 0), area * 0.6)).toBeLessThan(1e-12);
    expect(relative(airflowError(20, 0.1, 0, 0.2, 0), area * 0.2)).toBeLessThan(1e-12);
    expect(relative(airflowError(20, 0.1, 0, 0, 0.001), area * 0.4)).toBeLessThan(1e-12);
    expect(airflowError(20, 0.1, 0, 0, 0)).toBe(0);
  });

  test("of a duct 1 % wider is about what the airflow of that duct gains: the area goes with the square", () => {
    const flow = (diameter: number): number => 20 * (Math.PI / 4) * diameter ** 2;
    const gained = (flow(0.101) - flow(0.099)) / 2;
    expect(relative(airflowError(20, 0.1, 0, 0, 0.001), gained)).toBeLessThan(1e-9);
  });

  test("grows with each part, and is never more than the parts' plain sum", () => {
    fc.assert(
      fc.property(parts, ([velocity, diameter, percent, floor, tape]) => {
        const error = airflowError(velocity, diameter, percent, floor, tape);
        expect(airflowError(velocity, diameter, percent + 1, floor, tape)).toBeGreaterThan(error);
        expect(airflowError(velocity, diameter, percent, floor + 0.1, tape)).toBeGreaterThan(error);
        expect(airflowError(velocity, diameter, percent, floor, tape + 0.001)).toBeGreaterThan(error);
        const sum =
          airflowError(velocity, diameter, percent, 0, 0) +
          airflowError(velocity, diameter, 0, floor, 0) +
          airflowError(velocity, diameter, 0, 0, tape);
        expect(error).toBeLessThanOrEqual(sum * (1 + 1e-12) + NO_DIGITS);
      }),
      { examples: [[[0.21666666666666667, 0.08976902656949784, 0, 4.4e-323, 7.4e-323]]] },
    );
  });

  test.each([
    ["velocity must be from 0 to 60 m/s; got -1", -1, 0.1, 3, 0.2, 0.001],
    ["velocity must be from 0 to 60 m/s; got 61", 61, 0.1, 3, 0.2, 0.001],
    ["diameter must be above 0 m; got 0", 20, 0, 3, 0.2, 0.001],
    ["percent must be from 0.1 to 100 %; got 101", 20, 0.1, 101, 0.2, 0.001],
    ["percent must be from 0.1 to 100 %; got 0.03", 20, 0.1, 0.03, 0.2, 0.001], // 3 % typed with its sign
    ["percent must be from 0.1 to 100 %; got -3", 20, 0.1, -3, 0.2, 0.001],
    ["floor must be at least 0 m/s; got -0.2", 20, 0.1, 3, -0.2, 0.001],
    ["diametererror must be below 0.1 m; got 0.1", 20, 0.1, 3, 0.2, 0.1],
    ["percent must be from 0.1 to 100 %; got a number that is not finite", 20, 0.1, NaN, 0.2, 0.001],
  ])("refuses, and says why: %s", (message, velocity, diameter, percent, floor, tape) => {
    expectRefusal(() => airflowError(velocity, diameter, percent, floor, tape), DomainError, message);
  });
});
