import fc from "fast-check";
import { velocityPressure } from "../../../src/core/air/velocityPressure";
import { DomainError } from "../../../src/core/errors";
import { hoodAirflow, hoodSuction } from "../../../src/core/hoods/hood";
import { expectRefusal } from "../../support/coreRefusal";
import { halfLastDigit, relative } from "../../support/printed";

const airflow = fc.double({ min: 1e-3, max: 5, noNaN: true });
const diameter = fc.double({ min: 0.05, max: 1, noNaN: true });
const entry = fc.double({ min: 0, max: 10, noNaN: true });

describe("hoodSuction", () => {
  // Certification-exam question bank: entry loss 0.6, velocity pressure 2 in.w.g., hood static pressure 3.2 in.w.g.
  test("is 1.6 velocity pressures behind an entry of 0.6", () => {
    const flow = 0.1;
    const pressure = velocityPressure(flow / ((Math.PI / 4) * 0.1 ** 2), 1.2);
    expect(Math.abs((2 * hoodSuction(flow, 0.1, 0.6, 1.2)) / pressure - 3.2)).toBeLessThan(halfLastDigit("3.2"));
    expect(relative(hoodSuction(flow, 0.1, 0.6, 1.2), 1.6 * pressure)).toBeLessThan(1e-12);
  });

  // By hand: 0.16 m3/s in 0.1 m, 1.2 kg/m3: V 20.3718 m/s, p_v 249.007 Pa, (1 + 0.93) x 249.007 = 480.584 Pa
  test("is 480.584 Pa behind a plain end with 0.16 m3/s in 0.1 m", () => {
    expect(relative(hoodSuction(0.16, 0.1, 0.93, 1.2), 480.584)).toBeLessThan(1e-5);
  });

  test.each([
    [-1, 0.1, 0.5, 1.2, "airflow must be at least 0 m³/s; got -1"],
    [1, -0.1, 0.5, 1.2, "diameter must be above 0 m; got -0.1"],
    [1, 0.1, -0.5, 1.2, "entry must be at least 0; got -0.5"],
    [1, 0.1, NaN, 1.2, "entry must be at least 0; got a number that is not finite"],
    [1, 0.1, 0.5, 9, "density must be from 0.2 to 5 kg/m³; got 9"],
  ])("refuses %d, %d, %d, %d", (flow, pipe, k, air, message) => {
    expectRefusal(() => hoodSuction(flow, pipe, k, air), DomainError, message);
  });
});

describe("hoodAirflow", () => {
  // The same question bank: Ce 0.98, 4 in.w.g., 0.196 ft2, 1539 cfm (it reckons with V = 4005 sqrt(VP))
  test("is 1539 cfm with a coefficient of entry of 0.98", () => {
    const pipe = Math.sqrt((4 * 0.196 * 0.3048 ** 2) / Math.PI);
    const cubicMetres = hoodAirflow(4 * 248.84, pipe, 1 / 0.98 ** 2 - 1, 1.20138);
    expect(relative(cubicMetres / 0.0004719474432, 1539)).toBeLessThan(0.001);
  });

  test("turns hoodSuction round", () => {
    fc.assert(
      fc.property(airflow, diameter, entry, (flow, pipe, k) => {
        expect(relative(hoodAirflow(hoodSuction(flow, pipe, k, 1.2), pipe, k, 1.2), flow)).toBeLessThan(1e-12);
      }),
    );
  });

  test("at four times the suction is twice the airflow, and a worse entry draws less", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5000, noNaN: true }), diameter, entry, (suction, pipe, k) => {
        const here = hoodAirflow(suction, pipe, k, 1.2);
        expect(relative(hoodAirflow(4 * suction, pipe, k, 1.2), 2 * here)).toBeLessThan(1e-12);
        expect(hoodAirflow(suction, pipe, k + 0.01, 1.2)).toBeLessThan(here);
      }),
    );
  });

  test.each([
    [-1, 0.1, 0.5, 1.2, "suction must be at least 0 Pa; got -1"],
    [100, 0, 0.5, 1.2, "diameter must be above 0 m; got 0"],
    [100, 0.1, -0.5, 1.2, "entry must be at least 0; got -0.5"],
    [100, 0.1, 0.5, 0, "density must be from 0.2 to 5 kg/m³; got 0"],
  ])("refuses %d, %d, %d, %d", (suction, pipe, k, air, message) => {
    expectRefusal(() => hoodAirflow(suction, pipe, k, air), DomainError, message);
  });
});
