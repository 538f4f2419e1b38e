import fc from "fast-check";
import { AIR_VISCOSITY } from "../../../src/core/air/constants";
import { velocityPressure } from "../../../src/core/air/velocityPressure";
import { DomainError } from "../../../src/core/errors";
import { equivalentLength, frictionPerLength } from "../../../src/core/friction/frictionLoss";
import { sectionArea } from "../../../src/core/section/section";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const airflow = fc.double({ min: 1e-3, max: 5, noNaN: true });
const diameter = fc.double({ min: 0.05, max: 1, noNaN: true });
const wall = fc.double({ min: 0, max: 0.005, noNaN: true });
const density = fc.double({ min: 0.8, max: 1.4, noNaN: true });

// Printed rows stand in test/published/data/friction.ts; the iteration behind 0.023273 in designPass.byHand.test.ts.
describe("frictionPerLength", () => {
  // By hand: 0.16 m3/s in 0.1 m: p_v 249.007 Pa, f 0.0232730: 0.023273 / 0.1 x 249.007 = 57.9514 Pa/m
  test("is 57.9514 Pa/m at 0.16 m3/s in 0.1 m, roughness 0.15 mm, 1.2 kg/m3", () => {
    expect(relative(frictionPerLength(0.16, 0.1, 0.00015, 1.2), 57.9514)).toBeLessThan(1e-5);
  });

  // Laminar, Hagen and Poiseuille: dp/L = 128 mu Q / (pi D^4)
  test("is Hagen and Poiseuille's in slow air", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e-4, noNaN: true }), density, (flow, air) => {
        const expected = (128 * AIR_VISCOSITY * flow) / (Math.PI * 0.1 ** 4);
        expect(relative(frictionPerLength(flow, 0.1, 0.001, air), expected)).toBeLessThan(1e-12);
      }),
    );
  });

  // 4/pi m3/s through 1 m: V = 16/pi^2 m/s. At e/D = 0.2 and Re above 1e5 the wall alone counts: 1/sqrt(f) = -2 log10(0.2/3.7) = 2.534343,
  // f = 0.155693; dp/L = 0.155693 x 1.2 x 2.628091 / 2 = 0.245505 Pa/m (V^2 = 256/pi^4 = 2.628091). The rest of Colebrook's sum is below 0.1 %.
  test("takes a wall that is rough by exactly a fifth of the diameter", () => {
    expect(relative(frictionPerLength(4 / Math.PI, 1, 0.2, 1.2), 0.245505)).toBeLessThan(1e-3);
  });

  test("is nothing in still air", () => {
    expect(frictionPerLength(0, 0.1, 0.001, 1.2)).toBe(0);
  });

  test("rises with airflow and roughness, and falls with diameter", () => {
    fc.assert(
      fc.property(airflow, diameter, wall, density, (flow, pipe, rough, air) => {
        const here = frictionPerLength(flow, pipe, rough, air);
        expect(frictionPerLength(1.01 * flow, pipe, rough, air)).toBeGreaterThan(here);
        expect(frictionPerLength(flow, pipe, rough + 0.001, air)).toBeGreaterThanOrEqual(here);
        expect(frictionPerLength(flow, 1.01 * pipe, rough, air)).toBeLessThan(here);
      }),
    );
  });

  // At the same Reynolds number and e/D the factor is the same: twice the size at half the velocity is 1/8 per length.
  test("scales: twice the size with twice the airflow costs an eighth per length", () => {
    fc.assert(
      fc.property(airflow, diameter, wall, density, (flow, pipe, rough, air) => {
        const scaled = frictionPerLength(2 * flow, 2 * pipe, 2 * rough, air);
        expect(relative(scaled, frictionPerLength(flow, pipe, rough, air) / 8)).toBeLessThan(1e-11);
      }),
    );
  });

  test.each([
    [-0.1, 0.1, 0, 1.2, "airflow must be at least 0 m³/s; got -0.1"],
    [NaN, 0.1, 0, 1.2, "airflow must be at least 0 m³/s; got a number that is not finite"],
    [0.1, 0, 0, 1.2, "diameter must be above 0 m; got 0"],
    [0.1, 21, 0, 1.2, "diameter must be at most 20 m; got 21"],
    [0.1, 0.1, -1, 1.2, "material must be at least 0 m of roughness; got -1"],
    [0.1, 0.1, 0.021, 1.2, "material must be rough by at most 0.2 of the diameter; got 0.021"],
    [0.1, 0.1, 0, 0.1, "density must be from 0.2 to 5 kg/m³; got 0.1"],
    [0, 0.1, 0.021, 1.2, "material must be rough by at most 0.2 of the diameter; got 0.021"],
  ])("refuses %d m3/s, %d m, wall %d m, %d kg/m3", (flow, pipe, rough, air, message) => {
    expectRefusal(() => frictionPerLength(flow, pipe, rough, air), DomainError, message);
  });
});

describe("equivalentLength", () => {
  // K D / f = 0.27 x 0.1 / 0.023273 = 1.16014 m
  test("of an elbow of K 0.27 in that duct is 1.16014 m", () => {
    expect(relative(equivalentLength(0.27, 0.16, 0.1, 0.00015, 1.2), 1.16014)).toBeLessThan(1e-5);
  });

  test("of straight duct costs what the fitting costs", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        airflow,
        diameter,
        wall,
        density,
        (k, flow, pipe, rough, air) => {
          const length = equivalentLength(k, flow, pipe, rough, air);
          const pressure = velocityPressure(flow / sectionArea(pipe, null), air);
          expect(relative(length * frictionPerLength(flow, pipe, rough, air), k * pressure)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  test.each([
    [0.27, 0, 0.1, "airflow must be above 0 m³/s; got 0"],
    [0.27, -1, 0.1, "airflow must be above 0 m³/s; got -1"],
    [0.27, 0.1, -0.1, "diameter must be above 0 m; got -0.1"],
    [-0.27, 0.1, 0.1, "coefficient must be at least 0; got -0.27"],
    [NaN, 0.1, 0.1, "coefficient must be at least 0; got a number that is not finite"],
  ])("refuses K %d, %d m3/s, %d m", (k, flow, pipe, message) => {
    expectRefusal(() => equivalentLength(k, flow, pipe, 0, 1.2), DomainError, message);
  });
});
