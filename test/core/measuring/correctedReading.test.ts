import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { correctedReading } from "../../../src/core/measuring/correctedReading";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const positive = fc.double({ min: 1e-3, max: 1e4, noNaN: true });

describe("correctedReading", () => {
  // By hand: a 5 in duct has 0.136 ft2; with the 0.196 of a 6 in duct entered, a reading of 980 stands for 980 x 0.136 / 0.196 = 5000 x 0.136 = 680.
  test("the area of another duct is off in the airflow by the ratio of the two", () => {
    expect(relative(correctedReading(980, 0.196, 0.136), 680)).toBeLessThan(1e-12);
  });

  test("goes with the reading and with the true area, and undoes itself", () => {
    fc.assert(
      fc.property(positive, positive, positive, (reading, entered, area) => {
        const corrected = correctedReading(reading, entered, area);
        expect(relative(correctedReading(2 * reading, entered, area), 2 * corrected)).toBeLessThan(1e-12);
        expect(relative(correctedReading(reading, entered, 2 * area), 2 * corrected)).toBeLessThan(1e-12);
        expect(relative(correctedReading(corrected, area, entered), reading)).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    ["reading must be at least 0; got -1", -1, 1, 1],
    ["areaentered must be above 0; got 0", 1, 0, 1],
    ["areatrue must be above 0; got -1", 1, 1, -1],
    ["reading must be at least 0; got a number that is not finite", NaN, 1, 1],
  ])("refuses, and says why: %s", (message, reading, entered, area) => {
    expectRefusal(() => correctedReading(reading, entered, area), DomainError, message);
  });
});
