import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import {
  type CurvePoint,
  fanCurve,
  fanPressure,
  hasRisingPart,
  leastAirflow,
  mostAirflow,
  OutsideCurveError,
  curveAt,
} from "../../../src/core/fan/fanCurve";
import { expectRefusal } from "../../support/coreRefusal";
import { points } from "../../support/flows";
import { relative } from "../../support/printed";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Curves a fan could have and some that it could not: two to eight points, airflows clear of each other, in any order. */
const curves: fc.Arbitrary<CurvePoint[]> = fc
  .array(fc.record({ step: between(0.01, 1), pressure: between(0, 3000) }), { minLength: 2, maxLength: 8 })
  .chain((rows) => {
    let airflow = 0;
    const sorted = rows.map(({ step, pressure }) => ({ airflow: (airflow += step), pressure }));
    return fc.shuffledSubarray(sorted, { minLength: sorted.length });
  });

describe("fanCurve", () => {
  // By hand, points (0, 10), (1, 9), (2, 6), (4, 0): widths 1, 1, 2; secants -1, -3, -3.
  // Slopes (Fritsch and Carlson 1980, weighted harmonic mean; three-point ends):
  //   at 1: w1 = 2 + 1 = 3, w2 = 1 + 2 = 3: 6 / (3/-1 + 3/-3) = -1.5
  //   at 2: w1 = 2x2 + 1 = 5, w2 = 2 + 2x1 = 4: 9 / (5/-3 + 4/-3) = -3
  //   at 0: ((2x1 + 1)(-1) - 1(-3)) / 2 = 0;  at 4: ((2x2 + 1)(-3) - 2(-3)) / 3 = -3
  // Half way up the first piece: (10 + 9)/2 + 1 (0 - -1.5)/8 = 9.6875; the second: (9 + 6)/2 + 1 (-1.5 - -3)/8 = 7.6875;
  // the third is straight: 3. Slope in the middle of the first: 1.5 (-1) - (0 + -1.5)/4 = -1.125.
  test("equals Fritsch and Carlson's formulas worked by hand", () => {
    const curve = fanCurve(points([0, 10], [1, 9], [2, 6], [4, 0]));
    [0, -1.5, -3, -3].forEach((slope, index) => expect(curve.slopes[index]).toBeCloseTo(slope, 12));
    expect(curveAt(curve, 0.5).pressure).toBeCloseTo(9.6875, 12);
    expect(curveAt(curve, 1.5).pressure).toBeCloseTo(7.6875, 12);
    expect(curveAt(curve, 3).pressure).toBeCloseTo(3, 12);
    expect(curveAt(curve, 0.5).slope).toBeCloseTo(-1.125, 12);
  });

  // SciPy 1.17.1:
  //   from scipy.interpolate import PchipInterpolator
  //   p = PchipInterpolator([0, 250, 500, 750, 1000, 1200], [0.90, 0.95, 0.90, 0.75, 0.40, 0.00])   # a fan with a hump
  //   r = PchipInterpolator([0, 1, 3, 4, 4.5, 7], [0, 2, 2, 1, 5, 6])                              # flat, falling, steep
  //   print(p(q), p.derivative()(q))
  const printed = {
    "the curve with a hump": points([0, 0.9], [250, 0.95], [500, 0.9], [750, 0.75], [1000, 0.4], [1200, 0]),
    "the wild curve": points([0, 0], [1, 2], [3, 2], [4, 1], [4.5, 5], [7, 6]),
  };
  test.each<[keyof typeof printed, number, number, number]>([
    ["the curve with a hump", 125, 0.9375, 0.00019999999999999974],
    ["the curve with a hump", 375, 0.9343750000000001, -0.00022499999999999967],
    ["the curve with a hump", 600, 0.85656, -0.0005592],
    ["the curve with a hump", 650, 0.82584, -0.0006672000000000003],
    ["the curve with a hump", 900, 0.5627242105263158, -0.0015482526315789473],
    ["the curve with a hump", 1150, 0.11070723684210526, -0.0021569078947368424],
    ["the wild curve", 0, 0, 2.6666666666666665],
    ["the wild curve", 0.5, 1.3333333333333333, 2.3333333333333335],
    ["the wild curve", 2, 2, 0],
    ["the wild curve", 3.2, 1.896, -0.9600000000000006],
    ["the wild curve", 4.2, 2.3622251655629154, 11.214834437086097],
    ["the wild curve", 5, 5.409165562913907, 0.6891655629139073],
    ["the wild curve", 6.9, 5.998989986754967, 0.020446092715231734],
  ])("equals SciPy's PchipInterpolator: %s at %d", (given, airflow, pressure, slope) => {
    const reading = curveAt(fanCurve(printed[given]), airflow);
    expect(Math.abs(reading.pressure - pressure)).toBeLessThan(1e-13);
    expect(Math.abs(reading.slope - slope)).toBeLessThan(1e-13);
  });

  // Points (0, 1), (1, 2), (2, 12): secants 1 and 10. First end (3 x 1 - 10)/2 = -3.5 has the wrong sign: 0. Middle
  // 6/(3/1 + 3/10) = 1.81818; last end (3 x 10 - 1)/2 = 14.5. Points (0, 0), (1, 1), (2, -6): secants 1 and -7 turn, and
  // (3 + 7)/2 = 5 is held at three times the secant, 3; the turn is flat; the last end (3 x -7 - 1)/2 = -11.
  test("holds its end slopes", () => {
    const slopes = (...given: readonly (readonly [number, number])[]) => fanCurve(points(...given)).slopes;
    [0, 1.8181818, 14.5].forEach((slope, at) => expect(slopes([0, 1], [1, 2], [2, 12])[at]).toBeCloseTo(slope, 6));
    // pressures below 0 are refused, so all stand 6 higher
    [3, 0, -11].forEach((slope, at) => expect(slopes([0, 6], [1, 7], [2, 0])[at]).toBeCloseTo(slope, 9));
    // secants 2 and -9: (3 x 2 + 9)/2 = 7.5 is held at 6; the last end is (3 x -9 - 2)/2 = -14.5
    [6, 0, -14.5].forEach((slope, at) => expect(slopes([0, 7], [1, 9], [2, 0])[at]).toBeCloseTo(slope, 9));
    // secants 0 and -5: (0 + 5)/2 = 2.5 would leave a flat beginning, so it is 0; the last end is (3 x -5 - 0)/2 = -7.5
    [0, 0, -7.5].forEach((slope, at) => expect(slopes([0, 5], [1, 5], [2, 0])[at]).toBeCloseTo(slope, 9));
  });

  test("passes through its points, whatever their order, and reads the same at each end", () => {
    fc.assert(
      fc.property(curves, (given) => {
        const curve = fanCurve(given);
        for (const { airflow, pressure } of given) {
          expect(Math.abs(fanPressure(curve, airflow) - pressure)).toBeLessThanOrEqual(1e-9 * Math.max(1, pressure));
        }
        expect(curve.points.map(({ airflow }) => airflow)).toEqual(
          given.map(({ airflow }) => airflow).sort((a, b) => a - b),
        );
        expect(leastAirflow(curve)).toBe(Math.min(...given.map(({ airflow }) => airflow)));
        expect(mostAirflow(curve)).toBe(Math.max(...given.map(({ airflow }) => airflow)));
      }),
    );
  });

  test("between two points never turns and never leaves their range", () => {
    fc.assert(
      fc.property(curves, between(0, 1), between(0, 1), (given, one, two) => {
        const curve = fanCurve(given);
        const [low, high] = [Math.min(one, two), Math.max(one, two)];
        curve.points.slice(1).forEach((to, index) => {
          const from = curve.points[index]!;
          const at = (share: number) => curveAt(curve, from.airflow + share * (to.airflow - from.airflow)).pressure;
          const sense = Math.sign(to.pressure - from.pressure);
          expect(sense * (at(high) - at(low))).toBeGreaterThanOrEqual(-1e-9);
          for (const share of [low, high]) {
            expect(at(share)).toBeGreaterThanOrEqual(Math.min(from.pressure, to.pressure) - 1e-9);
            expect(at(share)).toBeLessThanOrEqual(Math.max(from.pressure, to.pressure) + 1e-9);
          }
        });
      }),
    );
  });

  test("its slope is the one that a difference quotient finds", () => {
    fc.assert(
      fc.property(curves, fc.nat(), between(0.01, 0.99), (given, pick, share) => {
        const curve = fanCurve(given);
        const piece = pick % (given.length - 1);
        const [from, to] = [curve.points[piece]!.airflow, curve.points[piece + 1]!.airflow];
        const at = from + share * (to - from);
        const step = 1e-4 * (to - from) * Math.min(share, 1 - share);
        const quotient = (curveAt(curve, at + step).pressure - curveAt(curve, at - step).pressure) / (2 * step);
        const size = 3000 / (to - from); // the quotient loses digits of a pressure of up to 3000 Pa
        expect(Math.abs(curveAt(curve, at).slope - quotient)).toBeLessThanOrEqual(1e-6 * size);
      }),
    );
  });

  test("two points are a straight line", () => {
    const line = fanCurve(points([0.5, 100], [0.1, 300]));
    for (const share of [0, 0.1, 0.3, 0.77, 1]) {
      expect(relative(fanPressure(line, 0.1 + 0.4 * share), 300 - 200 * share)).toBeLessThan(1e-12);
      expect(curveAt(line, 0.1 + 0.4 * share).slope).toBeCloseTo(-500, 9);
    }
  });

  test("a point moved a little moves the curve a little and only near it", () => {
    const [before, after] = [1000, 1001].map((middle) =>
      fanCurve(points([0, 2000], [1, 1500], [2, middle], [3, 400], [4, 0])),
    );
    expect(fanPressure(after!, 0.5)).toBeCloseTo(fanPressure(before!, 0.5), 0);
    expect(Math.abs(fanPressure(after!, 2.5) - fanPressure(before!, 2.5))).toBeLessThan(1);
    expect(fanPressure(after!, 2) - fanPressure(before!, 2)).toBeCloseTo(1, 9);
  });

  test("knows whether it rises anywhere", () => {
    expect(hasRisingPart(fanCurve(points([0, 900], [1, 950], [2, 0])))).toBe(true);
    expect(hasRisingPart(fanCurve(points([0, 900], [1, 900], [2, 0])))).toBe(false);
  });
});

describe("fanCurve refuses", () => {
  test.each<[string, CurvePoint[], string]>([
    ["no point", [], "curve must be at least two points of airflow and pressure; got 0"],
    ["one point", points([1, 2]), "curve must be at least two points of airflow and pressure; got 1"],
    ["an airflow twice", points([1, 2], [0, 3], [1, 1]), "curve must be one pressure for each airflow; got 1"],
    ["a negative airflow", points([-1, 2], [1, 0]), "airflow of the curve must be at least 0 m³/s; got -1"],
    ["a negative pressure", points([0, 2], [1, -3]), "pressure of the curve must be at least 0 Pa; got -3"],
    [
      "no number",
      points([0, NaN], [1, 0]),
      "pressure of the curve must be at least 0 Pa; got a number that is not finite",
    ],
  ])("%s", (_, given, message) => expectRefusal(() => fanCurve(given), DomainError, message));

  test.each([
    [0.05, "below its reach"],
    [0.50001, "beyond its reach"],
  ])("an airflow of %d, %s, and says how far it reaches", (airflow) => {
    const curve = fanCurve(points([0.1, 300], [0.5, 100]));
    expect(() => fanPressure(curve, airflow)).toThrow(OutsideCurveError);
    try {
      fanPressure(curve, airflow);
    } catch (error) {
      expect(error).toMatchObject({ from: 0.1, to: 0.5, airflow, message: "outside the fan curve" });
    }
  });

  test("an airflow that is none", () => {
    const curve = fanCurve(points([0, 300], [0.5, 100]));
    expectRefusal(() => fanPressure(curve, -1), DomainError, "airflow must be at least 0 m³/s; got -1");
    expectRefusal(
      () => fanPressure(curve, NaN),
      DomainError,
      "airflow must be at least 0 m³/s; got a number that is not finite",
    );
  });
});
