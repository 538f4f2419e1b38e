import fc from "fast-check";
import { velocityFromPressure, velocityPressure } from "../../../src/core/air/velocityPressure";
import { DomainError } from "../../../src/core/errors";
import { expectRefusal } from "../../support/coreRefusal";
import { halfLastDigit, relative } from "../../support/printed";

const density = fc.double({ min: 0.2, max: 5, noNaN: true });
const speed = fc.double({ min: 1e-3, max: 200, noNaN: true });

describe("velocityPressure", () => {
  test.each([
    { velocity: 1, density: 1.204, printed: "0.602", source: "ASHRAE duct design slides, p = 0.602 V^2" },
    { velocity: 8, density: 1.2, printed: "38.4", source: "Hundy et al., Ex 24.3" },
    { velocity: 5.5, density: 1.2, printed: "18.15", source: "Hundy et al., Ex 24.3" },
  ])("is $printed Pa at $velocity m/s ($source)", ({ velocity, density: air, printed }) => {
    expect(Math.abs(velocityPressure(velocity, air) - Number(printed))).toBeLessThan(halfLastDigit(printed));
  });

  test("goes with density and with the square of velocity", () => {
    fc.assert(
      fc.property(speed, fc.double({ min: 0.2, max: 2.5, noNaN: true }), (velocity, air) => {
        const pressure = velocityPressure(velocity, air);
        expect(relative(velocityPressure(3 * velocity, air), 9 * pressure)).toBeLessThan(1e-12);
        expect(relative(velocityPressure(velocity, 2 * air), 2 * pressure)).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    [-1, 1.2, "velocity must be at least 0 m/s; got -1"],
    [Infinity, 1.2, "velocity must be at least 0 m/s; got a number that is not finite"],
    [10, 0.1, "density must be from 0.2 to 5 kg/m³; got 0.1"],
    [10, NaN, "density must be from 0.2 to 5 kg/m³; got a number that is not finite"],
  ])("refuses %d m/s in %d kg/m3", (velocity, air, message) => {
    expectRefusal(() => velocityPressure(velocity, air), DomainError, message);
  });
});

describe("velocityFromPressure", () => {
  // Abulencia and Theodore, Ex 19.2: 0.2 in.w.g. (49.768 Pa) of standard air is 29.87 ft/s; water of 68 °F, 0.1 %
  test("is 29.87 ft/s at 0.2 in.w.g. in standard air", () => {
    expect(relative(velocityFromPressure(0.2 * 248.84, 1.20138) / 0.3048, 29.87)).toBeLessThan(0.001);
  });

  test("turns velocityPressure round", () => {
    fc.assert(
      fc.property(speed, density, (velocity, air) => {
        expect(relative(velocityFromPressure(velocityPressure(velocity, air), air), velocity)).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    [-0.5, 1.2, "pressure must be at least 0 Pa; got -0.5"],
    [NaN, 1.2, "pressure must be at least 0 Pa; got a number that is not finite"],
    [10, 6, "density must be from 0.2 to 5 kg/m³; got 6"],
  ])("refuses %d Pa in %d kg/m3", (pressure, air, message) => {
    expectRefusal(() => velocityFromPressure(pressure, air), DomainError, message);
  });
});
