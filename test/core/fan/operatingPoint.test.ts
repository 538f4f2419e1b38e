import fc from "fast-check";
import { DomainError, NoAnswerError } from "../../../src/core/errors";
import { type FanCurve, fanCurve, fanPressure, OutsideCurveError } from "../../../src/core/fan/fanCurve";
import { operatingPoint, stableCrossing } from "../../../src/core/fan/operatingPoint";
import { expectRefusal } from "../../support/coreRefusal";
import { points } from "../../support/flows";
import { relative } from "../../support/printed";

// Curves are made within a test: one that is refused by mistake then fails that test.
const line = (): FanCurve => fanCurve(points([0, 1000], [1, 0]));
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("operatingPoint", () => {
  // 1000 - 1000 Q = 500 Q^2 / 0.5^2 = 2000 Q^2: 2 Q^2 + Q - 1 = 0: Q = 0.5, p = 500. With 200 Pa fixed: 1000 - 1000 Q = 200 +
  // 1200 Q^2 (300 Pa above it at 0.5): 1.2 Q^2 + Q - 0.8 = 0: Q = (sqrt(1 + 3.84) - 1)/2.4 = 0.5 as well, p = 500.
  // With 200 Pa fixed and 800 at 0.5: 2400 Q^2 + 1000 Q - 800 = 0: Q = (sqrt(1e6 + 7.68e6) - 1000)/4800 = 0.4054550, p = 594.5450.
  test.each([
    [500, 0, 0.5, 500],
    [500, 200, 0.5, 500],
    [800, 200, 0.405455, 594.545],
  ])("a straight fan line and %d Pa at 0.5 m3/s, %d of it fixed, meet at %d m3/s", (pressure, fixed, airflow, at) => {
    const met = operatingPoint(line(), 0.5, pressure, fixed);
    expect(relative(met.airflow, airflow)).toBeLessThan(1e-6);
    expect(relative(met.pressure, at)).toBeLessThan(1e-6);
    expect(met.crossings).toBe(1);
  });

  // By rounding alone the cubic has a little more at its end than the point there, as if the fan had pressure to spare.
  test("a system through a point of the curve meets it there, at the curve's end too", () => {
    const [cfm, gauge] = [0.3048 ** 3 / 60, 248.84];
    const curve = fanCurve(points([0, 10 * gauge], [500 * cfm, 8 * gauge], [1000 * cfm, 2 * gauge]));
    for (const { airflow, pressure } of curve.points.slice(1)) {
      for (const part of [1, 2, 3, 7]) {
        const met = operatingPoint(curve, airflow / part, pressure / part ** 2, 0);
        expect(relative(met.airflow, airflow)).toBeLessThan(1e-11);
      }
    }
  });

  test("lies on the fan's curve and on the system's, for any falling fan", () => {
    const curve = fanCurve(points([0, 2500], [0.2, 2300], [0.5, 1500], [0.9, 0]));
    fc.assert(
      fc.property(between(0.01, 2), between(1, 5000), between(0, 0.4), (airflow, pressure, share) => {
        const fixed = share * Math.min(pressure, 2500);
        const met = operatingPoint(curve, airflow, pressure, fixed);
        const system = fixed + (pressure - fixed) * (met.airflow / airflow) ** 2;
        expect(Math.abs(fanPressure(curve, met.airflow) - system)).toBeLessThan(1e-9 * 2500);
        expect(Math.abs(met.pressure - system)).toBeLessThan(1e-9 * 2500);
      }),
    );
  });

  test("any point of one system line gives the same meeting", () => {
    fc.assert(
      fc.property(between(0.1, 10), (factor) => {
        const met = operatingPoint(line(), 0.5 * factor, 500 * factor ** 2, 0);
        expect(relative(met.airflow, 0.5)).toBeLessThan(1e-12);
      }),
    );
  });

  // 1000, 150, 900, 0 Pa at 0, 0.1, 0.2, 0.4 m3/s against 18 000 Q^2 (720 Pa at 0.2): above the fan at 0.1 (180 over 150), below at 0.2.
  test("of three crossings gives the last, where the fan falls below the system", () => {
    const hump = fanCurve(points([0, 1000], [0.1, 150], [0.2, 900], [0.4, 0]));
    const met = operatingPoint(hump, 0.2, 720, 0);
    expect(met.crossings).toBe(3);
    expect(met.airflow).toBeGreaterThan(0.2);
    expect(relative(met.pressure, 18_000 * met.airflow ** 2)).toBeLessThan(1e-12);
    expect(Math.abs(fanPressure(hump, met.airflow) - met.pressure)).toBeLessThan(1e-9);
  });

  // A fan that rises from 500 to 800 Pa against 600 Pa fixed: too weak at first, then stronger, then weaker again.
  test("a fixed part above the shut-off pressure is met twice on a hump: once unstably", () => {
    const hump = fanCurve(points([0, 500], [0.2, 800], [0.5, 0]));
    const met = operatingPoint(hump, 0.3, 610, 600);
    expect(met.crossings).toBe(2);
    expect(met.airflow).toBeGreaterThan(0.2);
  });

  test("a system that asks for nothing takes all that the curve has", () => {
    expect(operatingPoint(line(), 0.5, 0, 0)).toEqual({ airflow: 1, pressure: 0, crossings: 1, fromRest: 1 });
  });
});

describe("operatingPoint finds no answer", () => {
  const short = (): FanCurve => fanCurve(points([0.1, 900], [0.6, 400]));

  test("beyond the curve's end, and says how far it reaches", () => {
    expect(() => operatingPoint(short(), 1, 10, 0)).toThrow(OutsideCurveError);
    expect(() => operatingPoint(short(), 1, 10, 0)).toThrow(
      expect.objectContaining({ from: 0.1, to: 0.6, airflow: Infinity }) as Error,
    );
  });

  test("before the curve's start", () => {
    expect(() => operatingPoint(short(), 0.1, 2000, 0)).toThrow(
      expect.objectContaining({ from: 0.1, to: 0.6, airflow: 0 }) as Error,
    );
  });

  test("where the fixed part alone is more than the fan has", () => {
    expectRefusal(
      () => operatingPoint(line(), 0.5, 1500, 1200),
      NoAnswerError,
      "the system asks for more pressure than this fan has at any airflow",
    );
  });
});

test.each<[[number, number, number], string]>([
  [[0, 1, 0], "airflow must be above 0 m³/s; got 0"],
  [[1, 1, -1], "fixed must be at least 0 Pa; got -1"],
  [[1, 1, 2], "pressure must be at least 2 Pa; got 1"],
  [[1, NaN, 0], "pressure must be at least 0 Pa; got a number that is not finite"],
])("operatingPoint refuses %j", (design, message) =>
  expectRefusal(() => operatingPoint(line(), ...design), DomainError, message),
);

describe("stableCrossing", () => {
  const hump = (): FanCurve => fanCurve(points([0, 1], [1, 2], [2, 0]));

  // A surplus of our own: zero at 0.3, 0.9 and 1.6, positive before the first.
  test("counts every change of sign and finds the last fall to the last digit", () => {
    const surplus = (q: number) => -(q - 0.3) * (q - 0.9) * (q - 1.6);
    const { at, crossings, fromRest } = stableCrossing(hump(), surplus);
    expect(fromRest).toBeCloseTo(0.3, 9); // a fan that starts from rest meets it first
    expect(crossings).toBe(3);
    expect(relative(at, 1.6)).toBeLessThan(1e-14);
  });

  test("a surplus that is nothing from the start is met at the start", () => {
    expect(stableCrossing(hump(), (q) => -q)).toEqual({ at: 0, crossings: 1, fromRest: 0 });
  });

  test("a fall onto zero and on below it is one crossing", () => {
    expect(stableCrossing(hump(), (q) => 1 - q)).toEqual({ at: 1, crossings: 1, fromRest: 1 });
  });

  test("looks from the curve's first point to its last, and nowhere else", () => {
    const asked: number[] = [];
    const surplus = (q: number) => {
      asked.push(q);
      return 1.99 - q;
    };
    expect(relative(stableCrossing(hump(), surplus).at, 1.99)).toBeLessThan(1e-14);
    expect(Math.min(...asked)).toBe(0);
    expect(Math.max(...asked)).toBe(2);
  });
});
