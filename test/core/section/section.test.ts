import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { diameterForVelocity, equivalentDiameter, meanVelocity, sectionArea } from "../../../src/core/section/section";
import { expectRefusal } from "../../support/coreRefusal";
import { halfLastDigit, relative } from "../../support/printed";

const INCH = 0.0254;
const SQUARE_FOOT = 0.3048 ** 2;
const size = fc.double({ min: 0.01, max: 10, noNaN: true });
const airflow = fc.double({ min: 1e-4, max: 50, noNaN: true });

describe("sectionArea", () => {
  // Areas in ft2: slides on testing (3.5 in), filled duct sheet of 1995 (10, 16, 18, 20 in)
  test.each([
    [3.5, "0.0668"],
    [10, "0.55"],
    [16, "1.40"],
    [18, "1.77"],
    [20, "2.18"],
  ])("of %d in is %s ft2", (inches, printed) => {
    expect(Math.abs(sectionArea(inches * INCH, null) / SQUARE_FOOT - Number(printed))).toBeLessThan(
      halfLastDigit(printed),
    );
  });

  test("of a rectangle is width times height, and of a circle pi/4 of the square around it", () => {
    fc.assert(
      fc.property(size, size, (a, b) => {
        expect(sectionArea(a, b)).toBe(a * b);
        expect(relative(sectionArea(a, null), (Math.PI / 4) * sectionArea(a, a))).toBeLessThan(1e-15 * 4);
        expect(relative(sectionArea(2 * a, null), 4 * sectionArea(a, null))).toBeLessThan(1e-15 * 4);
      }),
    );
  });

  test.each<[number, number | null, string]>([
    [0, null, "diameter must be above 0 m; got 0"],
    [-1, null, "diameter must be above 0 m; got -1"],
    [20.1, null, "diameter must be at most 20 m; got 20.1"],
    [NaN, null, "diameter must be above 0 and at most 20 m; got a number that is not finite"],
    [1, 0, "height must be above 0 m; got 0"],
    [1, 21, "height must be at most 20 m; got 21"],
  ])("refuses %p by %p", (width, height, message) => {
    expectRefusal(() => sectionArea(width, height), DomainError, message);
  });
});

describe("meanVelocity", () => {
  // Cengel and Cimbala, Ex 14-1: 600 cfm in 9.06 in is 6.81 m/s
  test("of 600 cfm in 9.06 in is 6.81 m/s", () => {
    const velocity = meanVelocity(600 * 0.0004719474432, sectionArea(9.06 * INCH, null));
    expect(Math.abs(velocity - 6.81)).toBeLessThan(halfLastDigit("6.81"));
  });

  test.each([
    [-1, "airflow must be at least 0 m³/s; got -1"],
    [NaN, "airflow must be at least 0 m³/s; got a number that is not finite"],
  ])("refuses %d m3/s", (flow, message) => {
    expectRefusal(() => meanVelocity(flow, 1), DomainError, message);
  });
});

describe("diameterForVelocity", () => {
  // By hand: 390 cfm = 0.18405950 m3/s at 4000 fpm = 20.32 m/s: sqrt(4 x 0.1840595 / (pi x 20.32)) = 0.107392 m (4.228 in)
  test("for 390 cfm at 4000 fpm is 0.107392 m", () => {
    expect(relative(diameterForVelocity(390 * 0.0004719474432, 20.32), 0.107392)).toBeLessThan(1e-5);
  });

  test("carries that airflow at that velocity", () => {
    fc.assert(
      fc.property(airflow, fc.double({ min: 1, max: 50, noNaN: true }), (flow, velocity) => {
        const area = sectionArea(diameterForVelocity(flow, velocity), null);
        expect(relative(meanVelocity(flow, area), velocity)).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    [0, 20, "airflow must be above 0 m³/s; got 0"],
    [1, 0, "velocity must be above 0 m/s; got 0"],
    [1, NaN, "velocity must be above 0 m/s; got a number that is not finite"],
  ])("refuses %d m3/s at %d m/s", (flow, velocity, message) => {
    expectRefusal(() => diameterForVelocity(flow, velocity), DomainError, message);
  });
});

describe("equivalentDiameter", () => {
  // By hand for a square of side a: 1.30 a^1.25 / (2a)^0.25 = 1.30 / 2^0.25 a = 1.09317 a
  test("of a square is 1.09317 of its side", () => {
    expect(relative(equivalentDiameter(0.4, 0.4), 0.4 * 1.09317)).toBeLessThan(1e-5);
  });

  test("does not care which side is which, and scales with them", () => {
    fc.assert(
      fc.property(size, size, (a, b) => {
        expect(relative(equivalentDiameter(a, b), equivalentDiameter(b, a))).toBeLessThan(1e-14);
        expect(relative(equivalentDiameter(2 * a, 2 * b), 2 * equivalentDiameter(a, b))).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    [0, 1, "width must be above 0 m; got 0"],
    [1, -1, "height must be above 0 m; got -1"],
    [30, 1, "width must be at most 20 m; got 30"],
  ])("refuses %d by %d", (width, height, message) => {
    expectRefusal(() => equivalentDiameter(width, height), DomainError, message);
  });
});
