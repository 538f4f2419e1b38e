import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { DISCHARGE_COEFFICIENT, leakArea, leakAtSuction, openingLeak } from "../../../src/core/leaks/openingLeak";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const suction = fc.double({ min: 1, max: 10_000, noNaN: true });
const area = fc.double({ min: 1e-6, max: 0.1, noNaN: true });
const coefficient = fc.double({ min: 0.1, max: 1, noNaN: true });
const density = fc.double({ min: 0.2, max: 5, noNaN: true });

describe("openingLeak", () => {
  // By hand: 0.6 x 1e-4 m2 x sqrt(2 x 1000 / 1.2) = 0.6e-4 x 40.8248 = 0.00244949 m3/s
  test("through 100 mm2 at 1000 Pa is 0.00244949 m3/s", () => {
    expect(relative(openingLeak(1e-4, 1000, DISCHARGE_COEFFICIENT, 1.2), 0.00244949)).toBeLessThan(1e-5);
  });

  test("goes with the area and with the square root of the suction", () => {
    fc.assert(
      fc.property(area, suction, coefficient, density, (a, s, c, air) => {
        const here = openingLeak(a, s, c, air);
        expect(relative(openingLeak(3 * a, s, c, air), 3 * here)).toBeLessThan(1e-12);
        expect(relative(openingLeak(a, 4 * s, c, air), 2 * here)).toBeLessThan(1e-12);
        expect(openingLeak(a, 0, c, air)).toBe(0);
      }),
    );
  });

  test.each([
    [-1, 100, 0.6, 1.2, "area must be at least 0 m²; got -1"],
    [1, -100, 0.6, 1.2, "suction must be at least 0 Pa; got -100"],
    [1, 100, 0, 1.2, "coefficient must be above 0; got 0"],
    [1, 100, 1.1, 1.2, "coefficient must be at most 1; got 1.1"],
    [1, 100, NaN, 1.2, "coefficient must be above 0 and at most 1; got a number that is not finite"],
    [1, 100, 0.6, 0.1, "density must be from 0.2 to 5 kg/m³; got 0.1"],
  ])("refuses %d, %d, %d, %d", (a, s, c, air, message) => {
    expectRefusal(() => openingLeak(a, s, c, air), DomainError, message);
  });
});

describe("leakArea", () => {
  test("turns openingLeak round", () => {
    fc.assert(
      fc.property(area, suction, coefficient, density, (a, s, c, air) => {
        expect(relative(leakArea(openingLeak(a, s, c, air), s, c, air), a)).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    [-1, 100, 0.6, "airflow must be at least 0 m³/s; got -1"],
    [1, 0, 0.6, "suction must be above 0 Pa; got 0"],
    [1, 100, 2, "coefficient must be at most 1; got 2"],
  ])("refuses %d, %d, %d", (flow, s, c, message) => {
    expectRefusal(() => leakArea(flow, s, c, 1.2), DomainError, message);
  });
});

describe("leakAtSuction", () => {
  // UL 555S (second-hand): 8 cfm/ft2 at 4.5 in.w.g. is 11 at 8.5. SMACNA: a class grows with p^0.65, 2^0.65 = 1.569.
  test("follows the published steps", () => {
    expect(Math.abs(leakAtSuction(8, 4.5, 8.5, 0.5) - 11)).toBeLessThan(0.5);
    expect(Math.abs(leakAtSuction(6, 1, 2, 0.65) - 9.4)).toBeLessThan(0.05);
  });

  test("goes there and back, and through a third suction", () => {
    const exponent = fc.double({ min: 0.5, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1e3, noNaN: true }),
        suction,
        suction,
        suction,
        exponent,
        (flow, a, b, c, n) => {
          const there = leakAtSuction(flow, a, b, n);
          expect(relative(leakAtSuction(there, b, a, n), flow)).toBeLessThan(1e-12);
          expect(relative(leakAtSuction(there, b, c, n), leakAtSuction(flow, a, c, n))).toBeLessThan(1e-12);
        },
      ),
    );
  });

  test("of an opening is openingLeak at the other suction", () => {
    fc.assert(
      fc.property(area, suction, suction, (a, here, there) => {
        const leak = openingLeak(a, here, 0.6, 1.2);
        expect(relative(leakAtSuction(leak, here, there, 0.5), openingLeak(a, there, 0.6, 1.2))).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    [-1, 1, 2, 0.5, "airflow must be at least 0; got -1"],
    [1, 0, 2, 0.5, "suction must be above 0; got 0"],
    [1, 1, -2, 0.5, "newsuction must be at least 0; got -2"],
    [1, 1, 2, 0.4, "exponent must be from 0.5 to 1; got 0.4"],
    [1, 1, 2, 1.1, "exponent must be from 0.5 to 1; got 1.1"],
  ])("refuses %d, %d, %d, %d", (flow, a, b, n, message) => {
    expectRefusal(() => leakAtSuction(flow, a, b, n), DomainError, message);
  });
});
