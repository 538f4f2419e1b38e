import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { constantOfClass, constantOfEuropeanClass, seamLeak } from "../../../src/core/leaks/seamLeak";
import { expectRefusal } from "../../support/coreRefusal";
import { halfLastDigit, relative } from "../../support/printed";

const CFM = 0.0004719474432; // m3/s
const HUNDRED_SQUARE_FEET = 9.290304; // m2
const INCH_OF_WATER = 248.84; // Pa

const cfm = (leakageClass: number, inches: number): number =>
  seamLeak(constantOfClass(leakageClass), HUNDRED_SQUARE_FEET, inches * INCH_OF_WATER) / CFM;

describe("seamLeak", () => {
  // By hand: 1 cfm per 100 ft2 = 4.719474e-4 / 9.290304 = 5.08e-5 m/s; / 248.84^0.65 (36.0868) = 1.40772e-6
  test("has the constant 1.40772e-6 for class 1", () => {
    expect(relative(constantOfClass(1), 1.40772e-6)).toBeLessThan(1e-5);
  });

  // SMACNA 1985: the class is the leak of 100 ft2 at 1 in.w.g.; a trade playbook: class 6 at 2 in.w.g. is 9.4 cfm
  test("of 100 ft2 at 1 in.w.g. is the class itself, at 2 in.w.g. of class 6 it is 9.4 cfm", () => {
    for (const leakageClass of [3, 6, 12, 24, 48])
      expect(relative(cfm(leakageClass, 1), leakageClass)).toBeLessThan(1e-12);
    expect(Math.abs(cfm(6, 2) - 9.4)).toBeLessThan(halfLastDigit("9.4"));
  });

  // Derived from the two definitions: EN classes A to D are US classes 19, 6.4, 2.1 and 0.71.
  test.each([
    [0.027, "19"],
    [0.009, "6.4"],
    [0.003, "2.1"],
    [0.001, "0.71"],
  ])("of EN value %d is US class %s", (litres, printed) => {
    const leak = seamLeak(constantOfEuropeanClass(litres), HUNDRED_SQUARE_FEET, INCH_OF_WATER) / CFM;
    expect(Math.abs(leak - Number(printed))).toBeLessThan(halfLastDigit(printed));
  });

  test("goes with class and surface, and with pressure to the power 0.65", () => {
    const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, (constant, surface, pressure) => {
        const here = seamLeak(constant, surface, pressure);
        expect(relative(seamLeak(2 * constant, 3 * surface, pressure), 6 * here)).toBeLessThan(1e-12);
        expect(relative(seamLeak(constant, surface, 10 * pressure), 10 ** 0.65 * here)).toBeLessThan(1e-12);
        expect(seamLeak(constant, surface, 0)).toBe(0);
      }),
    );
  });

  test.each([
    [-1, 1, 1, "class must be at least 0; got -1"],
    [1, -1, 1, "surface must be at least 0 m²; got -1"],
    [1, 1, -1, "pressure must be at least 0 Pa; got -1"],
    [1, 1, NaN, "pressure must be at least 0 Pa; got a number that is not finite"],
  ])("refuses %d, %d, %d", (constant, surface, pressure, message) => {
    expectRefusal(() => seamLeak(constant, surface, pressure), DomainError, message);
  });
});
