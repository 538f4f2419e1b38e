import { AIR_VISCOSITY, DENSITY_LIMITS, STANDARD_DENSITY } from "../../../src/core/air/constants";
import { moistAirDensity } from "../../../src/core/air/moistAirDensity";
import { halfLastDigit } from "../../support/printed";

describe("the constants of air", () => {
  // 0.075 lb/ft3 x 0.45359237 kg/lb / 0.028316846592 m3/ft3 = 1.20138 kg/m3
  test("standard air is 1.20138 kg/m3", () => {
    expect(Math.abs(STANDARD_DENSITY - 1.20138)).toBeLessThanOrEqual(halfLastDigit("1.20138"));
  });

  // ASHRAE (from memory): 0.044 lb/(ft h) at 70 °F = 0.044 x 0.45359237 / (0.3048 x 3600) = 1.819e-5 Pa s
  test("viscosity is 0.044 lb per ft and hour", () => {
    expect(Math.abs(AIR_VISCOSITY - (0.044 * 0.45359237) / (0.3048 * 3600))).toBeLessThan(0.0005e-5);
  });

  test("every dry air that the density function can give is accepted elsewhere", () => {
    const thinnest = moistAirDensity(373.15, 11_000, 0);
    const densest = moistAirDensity(223.15, -500, 0);
    expect(thinnest).toBeGreaterThan(DENSITY_LIMITS.atLeast);
    expect(densest).toBeLessThan(DENSITY_LIMITS.atMost);
    expect(thinnest).toBeLessThan(densest);
  });
});
