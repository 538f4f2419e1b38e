import fc from "fast-check";
import { curveAt, type FanCurve, fanCurve } from "../../../src/core/fan/fanCurve";
import { measuredCurve, type ThrottleReading } from "../../../src/core/fan/measuredCurve";
import { points } from "../../support/flows";
import { normals } from "../../support/measuredShop";
import { relative } from "../../support/printed";

const DOUBT = { speed: 0.25, pressure: 0.15, meter: 0, shape: 0.08 };
const CERTAIN = { speed: 0, pressure: 0, meter: 0, shape: 0 };
const [AIR, PRESSURE] = [0.04, 0.03];

/** Invented fans: bent, humped, nearly straight. */
const BENT = points([0, 2800], [0.2, 2700], [0.4, 2600], [0.6, 2400], [0.8, 2000], [1, 1500], [1.2, 800]);
const HUMPED = points([0, 2400], [0.15, 2480], [0.3, 2550], [0.45, 2550], [0.6, 2430], [0.75, 2150], [0.9, 1720], [1.15, 550]); // prettier-ignore
const STRAIGHT = points([0, 2600], [0.3, 2350], [0.6, 1900], [0.9, 1300], [1.15, 600]);

const scaled = (of: typeof BENT, airflow: number, pressure: number): FanCurve =>
  fanCurve(of.map((point) => ({ airflow: point.airflow * airflow, pressure: point.pressure * pressure })));

/** Readings at even throttles of a fan, each off by its lot. */
const readingsOf = (truth: FanCurve, count: number, normal: () => number): ThrottleReading[] => {
  const most = truth.points.at(-1)!.airflow;
  return Array.from({ length: count }, (_, place) => {
    const airflow = most * (0.06 + (0.86 * place) / (count - 1));
    return {
      airflow: airflow * Math.exp(AIR * normal()),
      pressure: curveAt(truth, airflow).pressure * Math.exp(PRESSURE * normal()),
      airflowDeviation: AIR,
      pressureDeviation: PRESSURE,
    };
  });
};

// One unknown, by hand: all n readings are c times the print, each ± u of itself. The most plausible f has
// n f (c - f) / (u c)^2 = ln f / sd^2, and 1 / variance of ln f = n f^2 / (u c)^2 + 1 / sd^2.
test("with its pressure alone unknown, a fan's factor and ± are those of the equation by hand", () => {
  const [c, u, sd] = [0.8, 0.05, 0.15];
  const print = fanCurve(BENT);
  const flows = [0.2, 0.6, 1];
  const readings = flows.map((airflow) => ({ airflow, pressure: c * curveAt(print, airflow).pressure, airflowDeviation: 0, pressureDeviation: u })); // prettier-ignore
  const found = measuredCurve(readings, print, { ...CERTAIN, pressure: sd }, "read");
  for (const { airflow, pressure, deviation } of found.points) {
    const printed = curveAt(print, airflow).pressure;
    const f = pressure / printed;
    const [left, right] = [(3 * f * (c - f)) / (u * c) ** 2, Math.log(f) / sd ** 2];
    expect(Math.abs(left - right)).toBeLessThan(1e-6 * Math.abs(right));
    const variance = 1 / ((3 * f ** 2) / (u * c) ** 2 + 1 / sd ** 2);
    expect(relative(deviation, pressure * Math.sqrt(variance))).toBeLessThan(1e-9);
  }
});

test("readings on a copy of the print at another speed give that speed's curve", () => {
  const print = fanCurve(BENT);
  const copy = scaled(BENT, 0.85, 0.85 ** 2);
  const exact = readingsOf(copy, 6, () => 0).map((one) => ({
    ...one,
    airflowDeviation: 1e-5,
    pressureDeviation: 1e-5,
  }));
  const found = measuredCurve(exact, print, { ...CERTAIN, speed: 0.5 }, "printed");
  expect(relative(found.points.at(-1)!.airflow, 0.85 * 1.2)).toBeLessThan(1e-6);
  for (const { airflow, pressure } of found.points)
    expect(relative(pressure, curveAt(copy, Math.min(airflow, 0.85 * 1.2)).pressure)).toBeLessThan(1e-6);
});

test("what is certain stays as printed, whatever was read", () => {
  const found = measuredCurve(readingsOf(scaled(BENT, 1, 0.97), 2, () => 0), fanCurve(BENT), CERTAIN, "printed"); // prettier-ignore
  for (const { airflow, pressure, deviation } of found.points) {
    expect(relative(pressure, curveAt(fanCurve(BENT), airflow).pressure)).toBeLessThan(1e-12);
    expect(deviation).toBe(0);
  }
});

test("units and the order of the readings change nothing", () => {
  const factor = fc.double({ min: 0.01, max: 3000, noNaN: true });
  fc.assert(
    fc.property(factor, factor, fc.integer({ min: 1, max: 10_000 }), fc.boolean(), (air, pascals, seed, isTold) => {
      const readings = readingsOf(fanCurve(BENT), 5, normals(seed));
      const others = readings.map((one) => ({ ...one, airflow: one.airflow * air, pressure: one.pressure * pascals }));
      const one = measuredCurve(readings, isTold ? fanCurve(STRAIGHT) : null, DOUBT, "read");
      const other = measuredCurve(others.reverse(), isTold ? scaled(STRAIGHT, air, pascals) : null, DOUBT, "read");
      one.points.forEach(({ airflow, pressure, deviation }, index) => {
        expect(relative(other.points[index]!.airflow, airflow * air)).toBeLessThan(1e-9);
        expect(relative(other.points[index]!.pressure, pressure * pascals)).toBeLessThan(1e-6);
        expect(relative(other.points[index]!.deviation, deviation * pascals)).toBeLessThan(1e-5);
      });
    }),
  );
});

test("it ends where the readings do, or says from where on the print alone speaks, less surely", () => {
  const print = fanCurve(BENT);
  const readings = readingsOf(print, 5, normals(3)).slice(1, 4);
  const flows = readings.map(({ airflow }) => airflow);
  const [least, most] = [Math.min(...flows), Math.max(...flows)];
  for (const told of [print, null]) {
    const { points: read } = measuredCurve(readings, told, DOUBT, "read");
    expect([read[0]!.airflow, read.at(-1)!.airflow]).toEqual([least, most]);
    expect(read.some(({ beyond }) => beyond)).toBe(false);
  }
  const { points: printed } = measuredCurve(readings, print, DOUBT, "printed");
  expect(printed[0]!.airflow).toBe(0);
  for (const { airflow, beyond } of printed) expect(beyond).toBe(airflow < least || airflow > most);
  expect(printed[0]!.deviation).toBeGreaterThan(2 * Math.min(...printed.map(({ deviation }) => deviation)));
  // without a print there is nothing to go by
  expect(measuredCurve(readings, null, DOUBT, "printed").points.at(-1)!.airflow).toBe(most);
});

test.each([10, 1.7, 0.1])("a pressure that is %d times too large is left out, and its factor is told", (slip) => {
  for (const told of [fanCurve(BENT), null]) {
    const readings = readingsOf(fanCurve(BENT), 6, normals(9));
    readings[2] = { ...readings[2]!, pressure: readings[2]!.pressure * slip };
    const { left } = measuredCurve(readings, told, DOUBT, "read");
    expect(left.map(({ place }) => place)).toEqual([2]);
    expect(Math.abs(Math.log(left[0]!.factor / slip))).toBeLessThan(0.25);
  }
});

test("two readings that contradict each other are told, though neither can be accused", () => {
  const one = { airflowDeviation: AIR, pressureDeviation: PRESSURE };
  const readings = [
    { airflow: 0.6, pressure: 2400, ...one },
    { airflow: 0.62, pressure: 1200, ...one },
  ];
  const found = measuredCurve(readings, fanCurve(BENT), DOUBT, "read");
  expect([found.left, found.bends]).toEqual([[], true]);
});

test("where the print falls a curve falls, unless the readings clearly rise", () => {
  const normal = normals(21);
  for (let draw = 0; draw < 60; draw++) {
    const { points: found } = measuredCurve(readingsOf(fanCurve(BENT), 5, normal), fanCurve(STRAIGHT), DOUBT, "read");
    found.slice(1).forEach(({ pressure }, index) => expect(pressure).toBeLessThanOrEqual(found[index]!.pressure));
  }
  const rising = [0.1, 0.4, 0.7, 1].map((airflow) => ({ airflow, pressure: 1000 * (1 + airflow), airflowDeviation: 0.01, pressureDeviation: 0.01 })); // prettier-ignore
  const { points: up } = measuredCurve(rising, null, DOUBT, "read");
  expect(up.at(-1)!.pressure).toBeGreaterThan(up[0]!.pressure * 1.5);
});

/** How many of 100 truths at the points of the curve lie within two of the claimed deviations, over drawn readings. */
function held(truth: FanCurve, told: FanCurve | null, count: number): number {
  const normal = normals(count);
  let [inside, all] = [0, 0];
  for (let draw = 0; draw < 100; draw++) {
    const meter = Math.exp(0.03 * normal());
    const readings = readingsOf(truth, count, normal).map((one) => ({ ...one, airflow: one.airflow * meter }));
    for (const { airflow, pressure, deviation } of measuredCurve(readings, told, { ...DOUBT, meter: 0.03 }, "read")
      .points) {
      if (airflow > truth.points.at(-1)!.airflow) continue;
      if (Math.abs(pressure - curveAt(truth, airflow).pressure) <= 2 * deviation) inside++;
      all++;
    }
  }
  return (100 * inside) / all;
}

describe.each([3, 8])("of %d throttles the claimed ±", (count) => {
  const sameShape = scaled(BENT, 1 / 0.88, 1 / 0.88 ** 2 / 0.97);
  test.each([
    ["where the print has the fan's shape", BENT, sameShape],
    ["where the print has another shape", BENT, scaled(STRAIGHT, 1.15, 1.15)],
    ["of a straight fan with a bent print", STRAIGHT, scaled(BENT, 1.05, 1)],
    ["without a print", BENT, null],
    ["without a print, of a straight fan", STRAIGHT, null],
  ])("holds the truth in 93 to 99.5 of 100 %s", (_, truth, told) => {
    const share = held(fanCurve(truth), told, count);
    expect(share).toBeGreaterThan(93);
    expect(share).toBeLessThan(99.5);
  });

  // The weak spot, which the guide tells.
  test("holds it in only 80 to 92 where a humped fan has a straight print, and in more than 91 without the print", () => {
    const told = held(fanCurve(HUMPED), scaled(STRAIGHT, 1.1, 1.08), count);
    expect(told).toBeGreaterThan(80);
    expect(told).toBeLessThan(92);
    expect(held(fanCurve(HUMPED), null, count)).toBeGreaterThan(91);
  });
});
