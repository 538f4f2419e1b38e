import fc from "fast-check";
import { DomainError, NoAnswerError } from "../../../src/core/errors";
import { type Rounding, tradeSize } from "../../../src/core/section/tradeSize";
import { stockDiameters } from "../../../src/reference/tradeSizes";
import { expectRefusal } from "../../support/coreRefusal";

const INCH = 0.0254;
const inches = stockDiameters("IP");
const series = fc.constantFrom(inches, stockDiameters("SI"));

const inInches = (diameter: number, rounding: Rounding): number => tradeSize(diameter * INCH, rounding, inches) / INCH;

describe("tradeSize", () => {
  // Filled form: 390 cfm at 4000 fpm asks for 4.22 in at most, and 4.00 in is taken.
  test("below 4.22 in is 4 in", () => {
    expect(inInches(4.22, "down")).toBeCloseTo(4, 12);
  });

  test.each<[number, Rounding, number]>([
    [4.22, "up", 4.5],
    [4.22, "nearest", 4],
    [4.3, "nearest", 4.5],
    [6.5, "nearest", 6],
    [6, "down", 6],
    [6, "up", 6],
    [47, "nearest", 48],
    [60, "down", 48],
    [60, "nearest", 48],
    [1, "up", 2],
    [1, "nearest", 2],
  ])("%d in, %s, is %d in", (diameter, rounding, size) => {
    expect(inInches(diameter, rounding)).toBeCloseTo(size, 12);
  });

  test("4 in typed as 101.6 mm is still 4 in, either way", () => {
    for (const diameter of [0.1016, 0.1016 * (1 - 1e-12), 0.1016 * (1 + 1e-12)]) {
      expect(tradeSize(diameter, "down", inches)).toBe(4 * INCH);
      expect(tradeSize(diameter, "up", inches)).toBe(4 * INCH);
    }
  });

  // A series of our own, in whole metres: 1e-9 of 10 m is 1e-8 m.
  test("what counts as the same size grows with it", () => {
    expect(tradeSize(10 + 5e-9, "up", [10, 12])).toBe(10);
    expect(tradeSize(10 + 2e-8, "up", [10, 12])).toBe(12);
    expect(tradeSize(11 + 2e-9, "nearest", [10, 12])).toBe(10);
    expect(tradeSize(11 + 2e-8, "nearest", [10, 12])).toBe(12);
  });

  test("of two equally near sizes the smaller is taken", () => {
    for (const sizes of [inches, stockDiameters("SI")]) {
      sizes.slice(1).forEach((above, index) => {
        const below = sizes[index]!;
        expect(tradeSize((below + above) / 2, "nearest", sizes)).toBe(below);
      });
    }
  });

  test("a stock size is its own answer, whatever the rounding", () => {
    for (const sizes of [inches, stockDiameters("SI")]) {
      for (const rounding of ["down", "up", "nearest"] as const) {
        expect(sizes.map((size) => tradeSize(size, rounding, sizes))).toEqual(sizes);
      }
    }
  });

  test("down is at most, up at least the wanted diameter, and nearest one of the two", () => {
    fc.assert(
      fc.property(series, fc.double({ min: 0.064, max: 1.2, noNaN: true }), (sizes, diameter) => {
        const [down, up] = [tradeSize(diameter, "down", sizes), tradeSize(diameter, "up", sizes)];
        expect(down).toBeLessThanOrEqual(diameter * (1 + 1e-9));
        expect(up).toBeGreaterThanOrEqual(diameter * (1 - 1e-9));
        const nearest = tradeSize(diameter, "nearest", sizes);
        expect([down, up]).toContain(nearest);
        const farthest = nearest === down ? up : down;
        expect(Math.abs(nearest - diameter)).toBeLessThanOrEqual(Math.abs(farthest - diameter) + 1e-9 * diameter);
      }),
    );
  });

  test("has no answer beyond the series", () => {
    expectRefusal(() => tradeSize(1 * INCH, "down", inches), NoAnswerError, "no stock size is as small as that");
    expectRefusal(() => tradeSize(60 * INCH, "up", inches), NoAnswerError, "no stock size is as large as that");
  });

  test.each([
    [0, "diameter must be above 0 m; got 0"],
    [-1, "diameter must be above 0 m; got -1"],
    [NaN, "diameter must be above 0 m; got a number that is not finite"],
  ])("refuses %d m", (diameter, message) => {
    expectRefusal(() => tradeSize(diameter, "nearest", inches), DomainError, message);
  });
});
