import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { frictionPerLength } from "../../../src/core/friction/frictionLoss";
import { runLoss } from "../../../src/core/network/runLoss";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";
import { makeRun } from "../../support/runs";

const HOSE = 0.003;

describe("runLoss", () => {
  // By hand (designPass.byHand.test.ts): 0.16 m3/s, 0.1 m, 5 m, 0.15 mm, 1.2 kg/m3: V 20.3718 m/s, p_v 249.007 Pa,
  // f 0.023273: friction 289.757 Pa; fittings 0.27 x 249.007 = 67.2319 Pa; a separator of 300 Pa at 0.2 m3/s costs
  // 300 x 0.8^2 = 192 Pa in standard air (1.201385 kg/m3), 192 x 1.2/1.201385 = 191.779 Pa in this one.
  test("has the parts worked by hand", () => {
    const run = makeRun("saw", "fan", {
      length: 5,
      roughness: 0.00015,
      coefficient: 0.27,
      device: { ratedLoss: 300, ratedAirflow: 0.2, exponent: 2 },
    });
    const loss = runLoss(run, 0.16, HOSE, 1.2);
    const byHand = {
      velocity: 20.3718,
      velocityPressure: 249.007,
      friction: 289.757,
      fittings: 67.2319,
      device: 191.779,
    };
    expect(Object.keys(loss).sort()).toEqual(Object.keys(byHand).sort());
    for (const [part, value] of Object.entries(byHand)) {
      expect(relative(loss[part as keyof typeof byHand], value)).toBeLessThan(1e-5);
    }
  });

  test("adds hose to pipe, each with its own wall", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (airflow, length, hoseLength) => {
          const { friction } = runLoss(
            makeRun("a", "fan", { length, hoseLength, roughness: 0.0001 }),
            airflow,
            HOSE,
            1.2,
          );
          const pipe = length * frictionPerLength(airflow, 0.1, 0.0001, 1.2);
          const hose = hoseLength * frictionPerLength(airflow, 0.1, HOSE, 1.2);
          expect(relative(friction, pipe + hose)).toBeLessThan(1e-12);
          expect(hose / hoseLength).toBeGreaterThan(pipe / length);
        },
      ),
    );
  });

  // A wall may be rough by 0.2 of the diameter; here both are rough by 0.3 of 10 mm, of a pipe and a hose that are not there.
  test("asks nothing of the wall of a pipe or hose that has no length", () => {
    expect(runLoss(makeRun("a", "fan", { diameter: 0.01, roughness: HOSE }), 0.001, HOSE, 1.2).friction).toBe(0);
  });

  test("is nothing in a run without length, fittings and device, and nothing without air", () => {
    const bare = runLoss(makeRun("a", "fan"), 0.5, HOSE, 1.2);
    expect([bare.friction, bare.fittings, bare.device]).toEqual([0, 0, 0]);
    const device = { ratedLoss: 300, ratedAirflow: 0.2, exponent: 1 };
    const still = runLoss(makeRun("a", "fan", { length: 5, hoseLength: 1, coefficient: 3, device }), 0, HOSE, 1.2);
    expect(still).toEqual({ velocity: 0, velocityPressure: 0, friction: 0, fittings: 0, device: 0 });
  });

  test("grows with airflow in every part", () => {
    const device = { ratedLoss: 300, ratedAirflow: 0.2, exponent: 1 };
    const run = makeRun("a", "fan", { length: 5, hoseLength: 1, coefficient: 3, device });
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 2, noNaN: true }), (airflow) => {
        const [less, more] = [runLoss(run, airflow, HOSE, 1.2), runLoss(run, 1.01 * airflow, HOSE, 1.2)];
        for (const part of Object.keys(less) as (keyof typeof less)[]) expect(more[part]).toBeGreaterThan(less[part]);
      }),
    );
  });

  test.each<[string, Parameters<typeof makeRun>[2], number, string]>([
    ["air that runs backwards", {}, -0.1, "velocity must be at least 0 m/s; got -12.7324"],
    [
      "a wall too rough",
      { length: 1, roughness: 0.03 },
      0.1,
      "material must be rough by at most 0.2 of the diameter; got 0.03",
    ],
    ["a diameter of 0", { diameter: 0 }, 0.1, "diameter must be above 0 m; got 0"],
    [
      "a device rated at no air",
      { device: { ratedLoss: 1, ratedAirflow: 0, exponent: 2 } },
      0.1,
      "ratedairflow must be above 0; got 0",
    ],
  ])("refuses %s", (_, facts, airflow, message) => {
    // -0.1 m3/s / 0.00785398 m2 = -12.7324 m/s
    expectRefusal(() => runLoss(makeRun("a", "fan", facts), airflow, HOSE, 1.2), DomainError, message);
  });
});
