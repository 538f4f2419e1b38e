import { AIR, makeRun } from "../../../support/runs";
import { relative } from "../../../support/printed";
import { flowsOf, inTestAir, points } from "../../../support/flows";

const near = (ours: number, byHand: number): void => expect(relative(ours, byHand)).toBeLessThan(1e-5);

describe("solveNetwork, worked with a pocket calculator (air of 1.2 kg/m3)", () => {
  // 200 mm: A = 0.0314159 m2, rho/(2 A^2) = 607.927. Hood K 1 and fittings K 1: p = 1215.854 Q^2. Fan: 1000 - 1000 Q.
  // 1215.854 Q^2 + 1000 Q - 1000 = 0: Q = (sqrt(1e6 + 4 x 1215.854 x 1000) - 1000) / (2 x 1215.854) = 0.584548 m3/s,
  // p = 415.452 Pa; behind the hood P = 607.927 Q^2 = 207.726 Pa.
  test("one hood on a straight fan line is a quadratic", () => {
    const flows = flowsOf(
      [makeRun("saw", "fan", { diameter: 0.2, hood: 1, coefficient: 1 })],
      inTestAir([0, 1000], [1, 0]),
    );
    expect(flows).toMatchObject({ status: "converged", crossings: 1 });
    near(flows.fanAirflow, 0.584548);
    near(flows.fanPressure, 415.452);
    near(flows.of("saw").suction, 207.726);
    expect(flows.of("saw").leak).toBe(0);
  });

  // Hood K 1 and fittings K in 100 mm: R = (1 + K) rho/(2 A^2), and R Q^2 = p0 (1 - Q/Q0) has the positive root
  // Q = 2 p0/(b + sqrt(b^2 + 4 R p0)) with b = p0/Q0. The answer is its root to the last digits, not only to the 1e-9 promised.
  test("one hood on a straight fan line is right to twelve digits, whatever it costs", () => {
    const [shutOff, most] = [1000, 1];
    for (let coefficient = 1; coefficient <= 60; coefficient++) {
      const { fanAirflow } = flowsOf(
        [makeRun("saw", "fan", { hood: 1, coefficient })],
        inTestAir([0, shutOff], [most, 0]),
      );
      const resistance = ((1 + coefficient) * 1.2) / 2 / ((Math.PI * 0.1 ** 2) / 4) ** 2;
      const b = shutOff / most;
      const root = (2 * shutOff) / (b + Math.sqrt(b * b + 4 * resistance * shutOff));
      expect(relative(fanAirflow, root)).toBeLessThan(1e-12);
    }
  });

  // Hood K 0.5, fittings K 1, 125 mm, 0.1 m3/s: A = 0.0122718 m2, V = 8.14873 m/s, p_v = 39.8411 Pa, P = 1.5 p_v = 59.7617.
  // Main 160 mm (A = 0.0201062 m2, K 0.5) with 400 mm2 of leak at its upstream end, driven by P + p_v(Q), Q = 0.1 + L:
  //   L = 0            V 4.97359 m/s   p_v 14.8420 Pa   S 74.6036 Pa   L = 0.6 x 4e-4 sqrt(2 S / 1.2) = 0.00267618
  //   L = 0.00267618   V 5.10669       p_v 15.6470      S 75.4087      L = 0.00269058
  //   L = 0.00269058   V 5.10741       p_v 15.6514      S 75.4131      L = 0.00269066 m3/s, and so on
  // Q = 0.102691 m3/s; at the fan 59.7617 + 0.5 x 15.6514 = 67.5874 Pa. The fan's line to 0.2 m3/s runs through that point.
  test("a leak is driven by its own run's static suction, velocity pressure included", () => {
    const shutOff = 67.5874 / (1 - 0.10269066 / 0.2);
    const flows = flowsOf(
      [
        makeRun("saw", "main", { diameter: 0.125, hood: 0.5, coefficient: 1 }),
        makeRun("main", "fan", { diameter: 0.16, coefficient: 0.5, leakArea: 4e-4 }),
      ],
      inTestAir([0, shutOff], [0.2, 0]),
    );
    near(flows.of("main").leak, 0.00269066);
    near(flows.of("saw").airflow, 0.1);
    near(flows.fanAirflow, 0.102691);
    near(flows.of("main").suction, 59.7617);
    near(flows.fanPressure, 67.5874);
  });

  // Two equal hoods and a discharge: each hood K 1, 100 mm (A = 0.00785398 m2, rho/(2 A^2) = 9726.83), 0.05 m3/s: P = 24.3171 Pa.
  // Main 200 mm, 0.1 m3/s, K 2: 2 x 607.927 x 0.01 = 12.1585 Pa. Chimney 160 mm (rho/(2 A^2) = 1484.20), K 1: 14.8420 Pa.
  // Fan: 51.3176 Pa at 0.1 m3/s.
  test("hoods share, and the discharge is the fan's to push", () => {
    const hood = { hood: 1 };
    const flows = flowsOf(
      [
        makeRun("left", "main", hood),
        makeRun("right", "main", hood),
        makeRun("main", "fan", { diameter: 0.2, coefficient: 2 }),
        makeRun("chimney", "", { side: "discharge", diameter: 0.16, coefficient: 1 }),
      ],
      inTestAir([0, 2 * 51.3176], [0.2, 0]),
    );
    expect(flows.status).toBe("converged");
    near(flows.fanAirflow, 0.1);
    near(flows.fanPressure, 51.3176);
    near(flows.of("left").airflow, 0.05);
    near(flows.of("right").suction, 24.3171);
    near(flows.of("main").suction, 24.3171);
  });

  // The same pressure drives half the airflow ratio: air twice as thin, fan at half its pressure (it goes with density).
  test("the fan's pressure goes with density", () => {
    const saw = [makeRun("saw", "fan", { diameter: 0.2, hood: 1, coefficient: 1 })];
    const standard = 1.201384; // kg/m3, 0.075 lb/ft3
    const thin = flowsOf(saw, points([0, 1000], [1, 0]), { ...AIR, density: standard / 2 });
    const usual = flowsOf(saw, points([0, 1000], [1, 0]), { ...AIR, density: standard });
    near(thin.fanAirflow, usual.fanAirflow);
    near(thin.fanPressure, usual.fanPressure / 2);
    near(usual.fanPressure, 1000 - 1000 * usual.fanAirflow);
  });
});
