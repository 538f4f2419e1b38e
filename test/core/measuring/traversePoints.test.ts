import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { traversePoints } from "../../../src/core/measuring/traversePoints";
import type { TraverseRule } from "../../../src/reference/traverseFractions";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const INCH = 0.0254; // m
const offered: readonly (readonly [TraverseRule, number])[] = [
  ["log-linear", 4],
  ["log-linear", 6],
  ["log-linear", 8],
  ["log-linear", 10],
  ["log-Tchebycheff", 5],
  ["log-Tchebycheff", 6],
  ["log-Tchebycheff", 7],
];

/** A turbulent profile along a line of length 1: velocity rises with the distance from the nearer wall to the power 1/7. */
const seventhPower = (place: number): number => (2 * Math.min(place, 1 - place)) ** (1 / 7);
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("traversePoints", () => {
  // Two instrument manuals (read in a copy): 6 points up to 10 in, above it 8 or 10; a side under 30 in 5, to 36 in 6, above 7.
  test.each([
    ["log-linear", 4, 6],
    ["log-linear", 10, 6],
    ["log-linear", 10.01, 8],
    ["log-linear", 24, 8],
    ["log-Tchebycheff", 29.99, 5],
    ["log-Tchebycheff", 30, 6],
    ["log-Tchebycheff", 36, 6],
    ["log-Tchebycheff", 36.01, 7],
  ] as const)("%s in a duct of %p in takes %p points where none are asked for", (rule, inches, count) => {
    expect(traversePoints(inches * INCH, null, rule)).toHaveLength(count);
  });

  test.each(offered)(
    "%s with %p points: depths rise, stay inside and are the same from either wall",
    (rule, points) => {
      const size = fc.double({ min: 0.05, max: 3, noNaN: true });
      fc.assert(
        fc.property(size, (diameter) => {
          const depths = traversePoints(diameter, points, rule);
          expect(depths).toHaveLength(points);
          expect(depths).toEqual([...depths].sort((a, b) => a - b));
          depths.forEach((depth, index) => {
            const twin = depths.at(-1 - index)!;
            expect(depth).toBeGreaterThan(0);
            expect(relative(depth + twin, diameter)).toBeLessThan(1e-9);
          });
        }),
        { numRuns: 50 },
      );
    },
  );

  // By hand: in a round duct the mean of (1 - r/R)^(1/7) over the area is 2 n^2 / ((n + 1)(2n + 1)) with n = 7, 98/120.
  test.each(offered.filter(([rule]) => rule === "log-linear"))(
    "%s with %p points finds the mean of a seventh-power profile in a round duct, 98/120, within 0.5 %",
    (rule, points) => {
      expect(relative(mean(traversePoints(1, points, rule).map(seventhPower)), 98 / 120)).toBeLessThan(0.005);
    },
  );

  // By hand: along a line the mean of y^(1/7) from wall to middle is 7/8.
  test.each(offered.filter(([rule]) => rule === "log-Tchebycheff"))(
    "%s with %p points finds the mean of a seventh-power profile between two walls, 7/8, within 0.3 %",
    (rule, points) => {
      expect(relative(mean(traversePoints(1, points, rule).map(seventhPower)), 7 / 8)).toBeLessThan(0.003);
    },
  );

  test.each([
    [0.1, 7, "log-linear", 'points must be 4, 6, 8 or 10 by the rule "log-linear"; got 7'],
    [0.1, 6.5, "log-linear", 'points must be 4, 6, 8 or 10 by the rule "log-linear"; got 6.5'],
    [0.5, 8, "log-Tchebycheff", 'points must be 5, 6 or 7 by the rule "log-Tchebycheff"; got 8'],
    [0, 6, "log-linear", "diameter must be above 0 m; got 0"],
    [21, null, "log-linear", "diameter must be at most 20 m; got 21"],
    [NaN, null, "log-linear", "diameter must be above 0 and at most 20 m; got a number that is not finite"],
  ] as const)("refuses %p m, %p points, %s", (diameter, points, rule, message) => {
    expectRefusal(() => traversePoints(diameter, points, rule), DomainError, message);
  });
});
