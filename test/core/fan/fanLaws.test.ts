import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { airPower, scaledPoint } from "../../../src/core/fan/fanLaws";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

// The published fan-law examples stand in test/published/data/fans.ts.
const ratio = fc.double({ min: 0.1, max: 10, noNaN: true });
const point = fc.record({ airflow: ratio, pressure: ratio });

describe("scaledPoint", () => {
  test("Q ~ N D^3, p ~ N^2 D^2 rho: speed 2, density 3, size 1.5, by hand", () => {
    // 10 x 2 x 3.375 = 67.5; 7 x 4 x 2.25 x 3 = 189
    expect(scaledPoint({ airflow: 10, pressure: 7 }, 2, 3, 1.5)).toEqual({ airflow: 67.5, pressure: 189 });
  });

  test("one step after another is their product in one, and the way back leads back", () => {
    const ratios = fc.tuple(ratio, ratio, ratio);
    fc.assert(
      fc.property(point, ratios, (given, [n, rho, d]) => {
        const bySteps = scaledPoint(scaledPoint(scaledPoint(given, n, 1, 1), 1, rho, 1), 1, 1, d);
        const atOnce = scaledPoint(given, n, rho, d);
        const back = scaledPoint(atOnce, 1 / n, 1 / rho, 1 / d);
        for (const key of ["airflow", "pressure"] as const) {
          expect(relative(bySteps[key], atOnce[key])).toBeLessThan(1e-14);
          expect(relative(back[key], given[key])).toBeLessThan(1e-14);
        }
      }),
    );
  });

  test("a point rides on its own system line: p / Q^2 does not change with speed", () => {
    fc.assert(
      fc.property(point, ratio, (given, speed) => {
        const { airflow, pressure } = scaledPoint(given, speed, 1, 1);
        expect(relative(pressure / airflow ** 2, given.pressure / given.airflow ** 2)).toBeLessThan(1e-14);
      }),
    );
  });

  test.each<[string, [number, number, number], string]>([
    ["no speed", [0, 1, 1], "speedratio must be above 0; got 0"],
    ["too much speed", [11, 1, 1], "speedratio must be at most 10; got 11"],
    [
      "a density that is none",
      [1, NaN, 1],
      "densityratio must be above 0 and at most 10; got a number that is not finite",
    ],
    ["a negative size", [1, 1, -2], "sizeratio must be above 0; got -2"],
  ])("refuses %s", (_, ratios, message) =>
    expectRefusal(() => scaledPoint({ airflow: 1, pressure: 1 }, ...ratios), DomainError, message),
  );
});

describe("airPower", () => {
  test("is Q p / eta: 0.5 m3/s at 1500 Pa are 750 W, at an efficiency of 0.6 1250 W of shaft power", () => {
    expect(airPower(0.5, 1500, 1)).toBe(750);
    expect(relative(airPower(0.5, 1500, 0.6), 1250)).toBeLessThan(1e-15);
  });

  test("goes with the cube of the speed and the fifth power of the size", () => {
    fc.assert(
      fc.property(point, ratio, ratio, ratio, (given, n, rho, d) => {
        const scaled = scaledPoint(given, n, rho, d);
        const expected = airPower(given.airflow, given.pressure, 1) * n ** 3 * rho * d ** 5;
        expect(relative(airPower(scaled.airflow, scaled.pressure, 1), expected)).toBeLessThan(1e-13);
      }),
    );
  });

  test.each<[[number, number, number], string]>([
    [[-1, 1, 1], "airflow must be at least 0 m³/s; got -1"],
    [[1, -1, 1], "pressure must be at least 0 Pa; got -1"],
    [[1, 1, 0], "efficiency must be above 0; got 0"],
    [[1, 1, 1.1], "efficiency must be at most 1; got 1.1"],
  ])("refuses %j", (values, message) => expectRefusal(() => airPower(...values), DomainError, message));
});
