import fc from "fast-check";
import { leastBestPower, tipPressure, tipSpeed } from "../../../src/core/claims/fanBounds";
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
