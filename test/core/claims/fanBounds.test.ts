import fc from "fast-check";
import {
  airflowAtCoefficient,
  airflowThroughRim,
  leastBestPower,
  leastPower,
  squeezedTipPressure,
  tipPressure,
  tipSpeed,
} from "../../../src/core/claims/fanBounds";
import { DomainError } from "../../../src/core/errors";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const positive = (max: number) => fc.double({ min: 1e-3, max, noNaN: true });

describe("leastBestPower", () => {
  // By hand: the line p = 2000 (1 - Q) Pa is best at 0.5 m3/s and 1000 Pa, 500 W.
  test("is the best point of the straight line", () => expect(leastBestPower(1, 2000)).toBe(500));

  // Cengel and Cimbala, Fluid Mechanics, Table 14-1 (in companion worksheets): cfm and in H2O.
  test("lies below what a published fan curve makes at its best", () => {
    const curve = [
      [0, 0.9],
      [250, 0.95],
      [500, 0.9],
      [750, 0.75],
      [1000, 0.4],
      [1200, 0],
    ] as const;
    const best = Math.max(...curve.map(([airflow, pressure]) => airflow * pressure));
    expect(leastBestPower(1200, 0.95)).toBeLessThan(best);
  });

  test("lies on or below the best of any curve that bulges: a straight line less losses with the square", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        positive(5),
        positive(5000),
        (bulge, airflow, pressure) => {
          const at = (share: number): number => pressure * (1 - (1 - bulge) * share - bulge * share * share);
          const best = Math.max(...Array.from({ length: 101 }, (_, step) => (step / 100) * airflow * at(step / 100)));
          expect(leastBestPower(airflow, pressure)).toBeLessThanOrEqual(best * (1 + 1e-12));
        },
      ),
    );
  });

  test.each([
    ["airflow must be above 0 m³/s; got 0", 0, 1],
    ["pressure must be above 0 Pa; got -1", 1, -1],
  ])("refuses, and says why: %s", (message, airflow, pressure) => {
    expectRefusal(() => leastBestPower(airflow, pressure), DomainError, message);
  });
});

describe("tipPressure", () => {
  // By hand: 0.3 m at 50 turns a second: u = 47.12389 m/s, u^2 = 2220.661, times 1.2 is 2664.793 Pa.
  test("of 0.3 m at 50 turns a second: 47.12389 m/s, 2664.793 Pa", () => {
    expect(relative(tipSpeed(0.3, 50), 47.12389)).toBeLessThan(1e-6);
    expect(relative(tipPressure(0.3, 50, 1.2), 2664.793)).toBeLessThan(1e-6);
  });

  test("goes with the square of size and of speed, as the fan laws have it", () => {
    fc.assert(
      fc.property(positive(2), positive(500), (diameter, speed) => {
        const here = tipPressure(diameter, speed, 1.2);
        expect(relative(tipPressure(2 * diameter, speed, 1.2), 4 * here)).toBeLessThan(1e-12);
        expect(relative(tipPressure(diameter, 2 * speed, 1.2), 4 * here)).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    ["diameter must be above 0 m; got 0", 0, 50, 1.2],
    ["speed must be above 0 1/s; got -1", 0.3, -1, 1.2],
    ["density must be from 0.2 to 5 kg/m³; got 9", 0.3, 50, 9],
  ])("refuses, and says why: %s", (message, diameter, speed, density) => {
    expectRefusal(() => tipPressure(diameter, speed, density), DomainError, message);
  });
});

describe("leastPower", () => {
  // By hand, as a series in x = 10 000 / 101 325 = 0.0986923: 10 000 x (1 - x/2 - x²/6 - x³/12 - x⁴/20 - x⁵/30)
  // = 10 000 x (1 - 0.04934617 - 0.00162336 - 0.00008011 - 0.00000474 - 0.00000031) = 9489.453 W.
  test("of 1 m³/s against 10 000 Pa: 9489.45 W", () => expect(leastPower(1, 10_000)).toBeCloseTo(9489.45, 1));

  test("is less than Q p, and no less than it by half the pressure's share of the atmosphere and its square", () => {
    fc.assert(
      fc.property(positive(5), fc.double({ min: 1, max: 50_000, noNaN: true }), (airflow, pressure) => {
        const share = leastPower(airflow, pressure) / (airflow * pressure);
        const x = pressure / 101_325;
        expect(share).toBeLessThan(1);
        expect(share).toBeGreaterThan(1 - x / 2 - (x * x) / 2); // the series is 1 - x/2 - x²/6 - x³/12 - ...
      }),
    );
  });

  test.each([
    [0, 1, "airflow must be above 0 m³/s; got 0"],
    [1, 0, "pressure must be above 0 Pa; got 0"],
    [1, 101_325, "pressure must be below 101325 Pa; got 101325"],
  ])("refusal %#", (airflow, pressure, message) => {
    expectRefusal(() => leastPower(airflow, pressure), DomainError, message);
  });
});

describe("squeezedTipPressure", () => {
  // By hand: 0.3 m at 50 turns a second: 2664.793 Pa; 101 325 x (exp(0.02629946) - 1) = 2700.14 Pa; of two: exp(0.05259892): 5472.23 Pa.
  test("of 0.3 m at 50 turns a second: 2700.14 Pa, of two such stages 5472.23 Pa", () => {
    expect(relative(squeezedTipPressure(1, 0.3, 50, 1.2), 2700.14)).toBeLessThan(1e-5);
    expect(relative(squeezedTipPressure(2, 0.3, 50, 1.2), 5472.23)).toBeLessThan(1e-5);
  });

  test("is more than that of air that does not give way", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5 }), positive(1), positive(100), (stages, diameter, speed) =>
        expect(squeezedTipPressure(stages, diameter, speed, 1.2)).toBeGreaterThanOrEqual(
          stages * tipPressure(diameter, speed, 1.2) * (1 - 1e-12),
        ),
      ),
    );
  });

  test("refuses less than one stage", () => {
    expectRefusal(() => squeezedTipPressure(0.5, 0.3, 50, 1.2), DomainError, "stages must be at least 1; got 0.5");
  });
});

describe("airflows of a wheel", () => {
  // By hand: 47.12389 m/s through 0.07068583 m2 is 3.330991 m3/s, half of it 1.665496; a rim of 0.1 m: 47.12389 x 0.09424778 = 4.441322, half 2.220661.
  test("at half its tip's speed through the face 1.665496 m³/s, through a rim of 0.1 m 2.220661", () => {
    expect(relative(airflowAtCoefficient(0.5, 0.3, 50), 1.665496)).toBeLessThan(1e-6);
    expect(relative(airflowThroughRim(0.5, 0.3, 0.1, 50), 2.220661)).toBeLessThan(1e-6);
  });

  test("refuses what is no wheel", () => {
    expectRefusal(() => airflowAtCoefficient(0, 0.3, 50), DomainError, "coefficient must be above 0; got 0");
    expectRefusal(() => airflowThroughRim(0.5, 0.3, 0, 50), DomainError, "width must be above 0 m; got 0");
    expectRefusal(() => airflowThroughRim(0, 0.3, 0.1, 50), DomainError, "share must be above 0; got 0");
  });
});
