import fc from "fast-check";
import { velocityFromPressure, velocityPressure } from "../../../src/core/air/velocityPressure";
import { DomainError } from "../../../src/core/errors";
import { readingVelocity, traverseVelocity } from "../../../src/core/measuring/traverseVelocity";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const AIR = 1.2; // kg/m3
const velocities = fc.array(fc.double({ min: 0.5, max: 60, noNaN: true }), { minLength: 1, maxLength: 30 });

describe("traverseVelocity", () => {
  // By hand: 100 Pa and 400 Pa in air of 1.25 kg/m3 are sqrt(160) = 12.64911 and 25.29822 m/s, mean 18.97367 m/s.
  // The root of the mean pressure would be sqrt(2 x 250 / 1.25) = 20 m/s, 5 % too high.
  test("takes the mean of the roots, not the root of the mean: 100 and 400 Pa are 18.97367 m/s, not 20", () => {
    expect(relative(traverseVelocity([100, 400], "velocity pressure", 1.25), 18.97367)).toBeLessThan(1e-6);
  });

  test("of velocities is their plain mean", () => {
    expect(traverseVelocity([10, 20, 24], "velocity", AIR)).toBeCloseTo(18, 12);
  });

  test("is the same from velocities and from their pressures, and never above the root of the mean pressure", () => {
    fc.assert(
      fc.property(velocities, (readings) => {
        const pressures = readings.map((velocity) => velocityPressure(velocity, AIR) * (1 - 1e-12));
        const mean = traverseVelocity(pressures, "velocity pressure", AIR);
        expect(relative(mean, traverseVelocity(readings, "velocity", AIR))).toBeLessThan(1e-9);
        const meanPressure = pressures.reduce((sum, one) => sum + one, 0) / pressures.length;
        expect(mean).toBeLessThanOrEqual(velocityFromPressure(meanPressure, AIR) * (1 + 1e-9));
      }),
    );
  });

  test("refuses no reading at all", () => {
    expectRefusal(
      () => traverseVelocity([], "velocity", AIR),
      DomainError,
      "readings must be at least one reading; got a blank cell",
    );
  });

  test.each([
    [-1, "velocity", "reading must be at least 0 m/s; got -1"],
    [60.1, "velocity", "reading must be at most 60 m/s or its velocity pressure; got 60.1"],
    [NaN, "velocity", "reading must be at least 0 m/s; got a number that is not finite"],
    [-1, "velocity pressure", "reading must be at least 0 Pa; got -1"],
    [2161, "velocity pressure", "reading must be at most 60 m/s or its velocity pressure; got 2161"], // 0.6 x 60^2 = 2160
  ] as const)("refuses a reading of %p as %s", (reading, kind, message) => {
    expectRefusal(() => readingVelocity(reading, kind, AIR), DomainError, message);
    expectRefusal(() => traverseVelocity([10, reading], kind, AIR), DomainError, message);
  });
});
