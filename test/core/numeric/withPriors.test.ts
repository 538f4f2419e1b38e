import { covariance, type Linear, narrowedBy, seen, straightFit } from "../../../src/core/numeric/withPriors";
import { halfLastDigit } from "../../support/printed";

/** Before anyone read anything an unknown may be anything: so much more than the answers that it is no more to be seen. */
const ANYTHING = 30;

describe("the linear step against the calibration of a thermometer in JCGM 100, H.3", () => {
  // Data second-hand, from the documentation of the GUM Tree Calculator (gtc.readthedocs.io, GUM_H3); results as printed in H.3.2 to H.3.4, from memory.
  const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  const s = 0.0035; // [°C] printed: the deviation around the line, which the example finds from the points
  const slopes = t.map((one) => Float64Array.of(1, one - 20));
  const linear: Linear = { priors: [ANYTHING, ANYTHING], spreads: t.map(() => s), slopes };
  const [y1, y2] = straightFit(linear, b);
  const narrowed = narrowedBy(linear);
  const spread = (one: number[], other = one): number =>
    covariance(linear.priors, seen(narrowed, one), seen(narrowed, other));

  test.each([
    ["y1, °C", y1!, "-0.1712"],
    ["y2", y2!, "0.00218"],
    ["s(y1), °C", Math.sqrt(spread([1, 0])), "0.0029"],
    ["s(y2)", Math.sqrt(spread([0, 1])), "0.00067"],
    ["r(y1, y2)", spread([1, 0], [0, 1]) / Math.sqrt(spread([1, 0]) * spread([0, 1])), "-0.930"],
    ["b(30 °C), °C", y1! + 10 * y2!, "-0.1494"],
    ["its standard uncertainty, °C", Math.sqrt(spread([1, 10])), "0.0041"],
  ])("%s", (_, found, printed) => {
    expect([printed, Math.abs(found - Number(printed)) <= halfLastDigit(printed)]).toEqual([printed, true]);
  });
});

describe("the linear step against certified values of NIST, StRD, NoInt1", () => {
  // Read second-hand, in several packages' tests. A line through the origin: y = B1 x; the residual deviation is certified too.
  const x = Array.from({ length: 11 }, (_, index) => 60 + index);
  const y = x.map((one) => one + 70);
  const linear: Linear = {
    priors: [100],
    spreads: x.map(() => 3.56753034006338),
    slopes: x.map((one) => Float64Array.of(one)),
  };

  test("B1 and its standard deviation", () => {
    expect(straightFit(linear, y)[0]! / 2.07438016528926).toBeCloseTo(1, 6);
    const one = seen(narrowedBy(linear), [1]);
    expect(Math.sqrt(covariance(linear.priors, one, one)) / 0.0165289256198347).toBeCloseTo(1, 6);
  });
});

describe("the linear step", () => {
  // One unknown known to 0.3 before, read once to 0.4 as 1: weights 1/0.09 and 1/0.16, so 0.36 and a deviation of 0.24.
  test("weighs what one knew against what one reads, as two readings of one thing", () => {
    const linear: Linear = { priors: [0.3], spreads: [0.4], slopes: [Float64Array.of(1)] };
    expect(straightFit(linear, [1])[0]).toBeCloseTo(0.36, 12);
    const one = seen(narrowedBy(linear), [1]);
    expect(covariance(linear.priors, one, one)).toBeCloseTo(0.24 ** 2, 12);
  });

  test("moves nothing that was certain before", () => {
    const linear: Linear = { priors: [0, 0.3], spreads: [0.4], slopes: [Float64Array.of(5, 1)] };
    expect([...straightFit(linear, [1])]).toEqual([0, expect.closeTo(0.36, 12)]);
  });
});
