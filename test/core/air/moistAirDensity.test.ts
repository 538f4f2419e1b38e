import fc from "fast-check";
import psychrolib from "psychrolib";
import { USUAL_TEMPERATURE } from "../../../src/core/air/constants";
import { moistAirDensity } from "../../../src/core/air/moistAirDensity";
import { DomainError } from "../../../src/core/errors";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const kelvin = fc.double({ min: 223.15, max: 330, noNaN: true });
const metres = fc.double({ min: -500, max: 5000, noNaN: true });
const share = fc.double({ min: 0, max: 0.9, noNaN: true });

// All printed rows stand in test/published/data/density.ts; here two, and the laws.
describe("moistAirDensity", () => {
  // Tests of psychrolib, which quote ASHRAE Handbook Fundamentals 2017 chapter 1, Table 2; they state 0.1 %.
  test.each([
    { kelvin: 298.15, volume: 0.8443 }, // 25 °C, m3/kg
    { kelvin: 298.15, volume: 13.5251 / 16.01846337 }, // 77 °F, ft3/lb
  ])("equals ASHRAE's table for dry air at $kelvin K: $volume m3/kg", (row) => {
    expect(relative(moistAirDensity(row.kelvin, 0, 0), 1 / row.volume)).toBeLessThanOrEqual(0.001);
  });

  // 101 325 Pa / (287.042 J/(kg K) x 294.261 K) = 1.19960 kg/m3 = 0.07489 lb/ft3
  test("dry air of 70 °F at sea level is 1.1996 kg/m3", () => {
    expect(Math.abs(moistAirDensity(USUAL_TEMPERATURE, 0, 0) - 1.1996)).toBeLessThanOrEqual(0.00005);
  });

  test("falls with heat, height and damp", () => {
    fc.assert(
      fc.property(kelvin, metres, share, fc.double({ min: 0.5, max: 20, noNaN: true }), (t, z, h, more) => {
        const here = moistAirDensity(t, z, h);
        expect(moistAirDensity(t + more, z, h)).toBeLessThan(here);
        expect(moistAirDensity(t, z + 10 * more, h)).toBeLessThan(here);
        // The library keeps a humidity ratio of 1e-7 at least, so that deep cold air can be damper and no thinner.
        const damper = moistAirDensity(t, z, h + more / 200);
        if (t > 270) expect(damper).toBeLessThan(here);
        else expect(damper).toBeLessThanOrEqual(here);
      }),
    );
  });

  test("does not depend on the unit system that somebody else left in the library", () => {
    const before = moistAirDensity(300, 500, 0.5);
    psychrolib.SetUnitSystem(1); // the library's I-P
    expect(moistAirDensity(300, 500, 0.5)).toBe(before);
  });

  test.each([
    [223, 0, 0, "temperature must be from 223.15 to 373.15 K; got 223"],
    [373.2, 0, 0, "temperature must be from 223.15 to 373.15 K; got 373.2"],
    [NaN, 0, 0, "temperature must be from 223.15 to 373.15 K; got a number that is not finite"],
    [300, -501, 0, "altitude must be from -500 to 11000 m; got -501"],
    [300, 11_001, 0, "altitude must be from -500 to 11000 m; got 11001"],
    [300, 0, -0.1, "humidity must be from 0 to 1; got -0.1"],
    [300, 0, 50, "humidity must be from 0 to 1; got 50"],
    [370, 5000, 1, "humidity must be lower: air so hot and thin would be all vapour; got 1"],
  ])("refuses %d K, %d m, humidity %d", (t, z, h, message) => {
    expectRefusal(() => moistAirDensity(t, z, h), DomainError, message);
  });
});
