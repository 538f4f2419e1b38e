import fc from "fast-check";
import { logOfRatio, NEAR } from "../../../src/core/numeric/logOfRatio";

const FARTHEST = Math.sqrt(NEAR);

// What is cut off, 2 u^9/9, is at most 1.2e-16: below the last digit of a logarithm of size 1, to which this is added.
test("the logarithm of the ratio of two numbers that lie close is right to the last digit of the sum", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -FARTHEST, max: FARTHEST, noNaN: true, maxExcluded: true, minExcluded: true }),
      (u) => {
        const exact = Math.log1p((2 * u) / (1 - u)); // (1 + u)/(1 - u) = 1 + 2 u/(1 - u)
        expect(Math.abs(logOfRatio(u, u * u) - exact)).toBeLessThanOrEqual(Number.EPSILON);
      },
    ),
    { numRuns: 2000, examples: [[5e-324], [0.0199], [-0.0199], [0]] },
  );
});
