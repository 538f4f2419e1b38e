import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { frictionFactor, frictionFactorHaaland } from "../../../src/core/friction/frictionFactor";
import { expectRefusal } from "../../support/coreRefusal";
import { halfLastDigit, relative } from "../../support/printed";
import { lawRuns } from "../../support/lawRuns";

/** Evenly over the powers of ten, as duct and water and pipeline lie. */
const logarithmic = (low: number, high: number) =>
  fc.double({ min: Math.log10(low), max: Math.log10(high), noNaN: true }).map((power) => 10 ** power);

const turbulent = logarithmic(4e3, 1e11);
const roughness = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.05, noNaN: true }), logarithmic(1e-9, 0.05));

/** What is left of 1/sqrt(f) = -2 log10((e/D)/3.7 + 2.51/(Re sqrt f)). */
const residual = (reynolds: number, rough: number): number => {
  const x = 1 / Math.sqrt(frictionFactor(reynolds, rough));
  return x + 2 * Math.log10(rough / 3.7 + (2.51 * x) / reynolds);
};

// All printed rows stand in test/published/data/frictionFactor.ts.
describe("frictionFactor", () => {
  // Test values of the open-source library fluids (2026), every digit printed.
  test.each([
    { reynolds: 1e5, rough: 1e-4, f: 0.018513866077471648, by: "Colebrook" },
    { reynolds: 1e5, rough: 1e-4, f: 0.01851386607747165, by: "Clamond" },
    { reynolds: 104800000000.0, rough: 2.55e-8, f: 0.0037751087365339906, by: "Colebrook, a hard case" },
  ])("equals $f at Re $reynolds, e/D $rough ($by)", ({ reynolds, rough, f }) => {
    expect(relative(frictionFactor(reynolds, rough), f)).toBeLessThan(1e-12);
  });

  // The same source: Prandtl-von Karman-Nikuradse for a smooth wall.
  test("equals 0.00810266943 at Re 1e7 in a smooth pipe", () => {
    expect(Math.abs(frictionFactor(1e7, 0) - 0.00810266943)).toBeLessThanOrEqual(halfLastDigit("0.00810266943"));
  });

  // 1/sqrt(f) of turbulent air in a duct lies between 3 and 15; below Re 4000 it stands for the end of the line there.
  test("is the same from wherever its root is thought to be", () => {
    fc.assert(
      fc.property(
        logarithmic(100, 1e8),
        roughness,
        fc.double({ min: 3, max: 15, noNaN: true }),
        (reynolds, rough, near) => {
          expect(relative(frictionFactor(reynolds, rough, near), frictionFactor(reynolds, rough))).toBeLessThan(1e-13);
        },
      ),
    );
  });

  test("solves Colebrook's equation to the last digits", () => {
    fc.assert(
      fc.property(turbulent, roughness, (reynolds, rough) => {
        expect(Math.abs(residual(reynolds, rough))).toBeLessThan(1e-13);
      }),
      lawRuns(500),
    );
  });

  test("solves it up to a roughness of a fifth of the diameter", () => {
    fc.assert(
      fc.property(turbulent, fc.double({ min: 0.05, max: 0.2, noNaN: true }), (reynolds, rough) => {
        expect(Math.abs(residual(reynolds, rough))).toBeLessThan(1e-13);
      }),
    );
  });

  // Hagen and Poiseuille: f Re = 64
  test("is 64 / Re up to Re 2000, whatever the wall", () => {
    fc.assert(
      fc.property(logarithmic(1e-3, 2000), roughness, (reynolds, rough) => {
        expect(relative(frictionFactor(reynolds, rough) * reynolds, 64)).toBeLessThan(1e-15 * 4);
      }),
    );
  });

  test.each([0, 0.01, 0.2])("joins at Re 2000 and at Re 4000 without a step, e/D %d", (rough) => {
    for (const reynolds of [2000, 4000]) {
      const below = frictionFactor(reynolds * (1 - 1e-9), rough);
      const above = frictionFactor(reynolds * (1 + 1e-9), rough);
      expect(relative(above, below)).toBeLessThan(1e-7);
    }
  });

  test("rises in the band from Re 2000 to 4000, in a straight line", () => {
    const band = fc.double({ min: 2000, max: 4000, noNaN: true });
    fc.assert(
      fc.property(band, band, roughness, (a, b, rough) => {
        fc.pre(b - a > 1e-6);
        const [low, high] = [frictionFactor(a, rough), frictionFactor(b, rough)];
        expect(high).toBeGreaterThan(low);
        expect(Math.abs(frictionFactor((a + b) / 2, rough) - (low + high) / 2)).toBeLessThan(1e-15);
      }),
    );
  });

  test("falls with Reynolds number and rises with roughness where it is turbulent", () => {
    fc.assert(
      fc.property(logarithmic(4e3, 1e8), fc.double({ min: 0, max: 0.04, noNaN: true }), (reynolds, rough) => {
        const here = frictionFactor(reynolds, rough);
        expect(frictionFactor(1.1 * reynolds, rough)).toBeLessThan(here);
        expect(frictionFactor(reynolds, rough + 0.001)).toBeGreaterThan(here);
      }),
    );
  });

  test.each([
    [0, 0, "reynolds must be above 0; got 0"],
    [-1, 0, "reynolds must be above 0; got -1"],
    [NaN, 0, "reynolds must be above 0; got a number that is not finite"],
    [Infinity, 0, "reynolds must be above 0; got a number that is not finite"],
    [1e5, -0.01, "relative roughness must be from 0 to 0.2 of the diameter; got -0.01"],
    [1e5, 0.21, "relative roughness must be from 0 to 0.2 of the diameter; got 0.21"],
    [1e5, NaN, "relative roughness must be from 0 to 0.2 of the diameter; got a number that is not finite"],
  ])("refuses Re %d, e/D %d", (reynolds, rough, message) => {
    expectRefusal(() => frictionFactor(reynolds, rough), DomainError, message);
  });
});

describe("frictionFactorHaaland", () => {
  // Test value of the library fluids: Haaland 1983
  test("equals 0.018265053014793857 at Re 1e5, e/D 1e-4", () => {
    expect(relative(frictionFactorHaaland(1e5, 1e-4), 0.018265053014793857)).toBeLessThan(1e-12);
  });

  // Haaland states 2 % within Re 4000 to 1e8 and e/D up to 0.05.
  test("lies within 2 % of Colebrook", () => {
    fc.assert(
      fc.property(logarithmic(4e3, 1e8), fc.oneof(fc.constant(0), logarithmic(1e-6, 0.05)), (reynolds, rough) => {
        expect(relative(frictionFactorHaaland(reynolds, rough), frictionFactor(reynolds, rough))).toBeLessThan(0.02);
      }),
    );
  });

  test.each([
    [3999, 0, "reynolds must be at least 4000; got 3999"],
    [NaN, 0, "reynolds must be at least 4000; got a number that is not finite"],
    [1e5, 0.3, "relative roughness must be from 0 to 0.2 of the diameter; got 0.3"],
  ])("refuses Re %d, e/D %d", (reynolds, rough, message) => {
    expectRefusal(() => frictionFactorHaaland(reynolds, rough), DomainError, message);
  });
});
