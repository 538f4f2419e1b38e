import "../../support/customFunctions";
import fc from "fast-check";
import { reynolds } from "../../../src/functions/losses/reynolds";
import { velocitypressure } from "../../../src/functions/losses/velocitypressure";
import { relative } from "../../support/printed";
import { refusal, shown } from "../../support/refusal";

const one = (answer: unknown[][]): number => answer[0]![0] as number;
const si = (airflow: number, diameter: number, density: number): number =>
  one(reynolds([[airflow]], [[diameter]], [[density]], [["SI"]]));

describe("REYNOLDS", () => {
  // 4 rho Q / (pi D mu) by hand: 0.075 lb/ft3 = 1.20139 kg/m3, 400 cfm = 0.188779 m3/s, 4 in = 0.1016 m, mu = 1.819e-5 Pa s:
  // 4 x 1.20139 x 0.188779 / (pi x 0.1016 x 1.819e-5) = 0.907187 / 5.80599e-6 = 156 250
  test("of 400 cfm in 4 in is 156 250", () => {
    expect(relative(one(reynolds([[400]], [[4]])), 156_250)).toBeLessThan(1e-5);
  });

  test("of still air is 0", () => expect(one(reynolds([[0]], [[4]]))).toBe(0));

  // Hagen and Poiseuille: dp/L = 128 mu Q / (pi D^4), which is 64/Re/D of the velocity pressure whatever the density.
  test("is that with which 64/Re gives the loss of air that flows in layers", () => {
    const [flow, width, air] = [
      fc.double({ min: 0.1, max: 5000, noNaN: true }),
      fc.double({ min: 50, max: 500, noNaN: true }),
      fc.double({ min: 0.6, max: 1.5, noNaN: true }),
    ];
    fc.assert(
      fc.property(flow, width, air, (airflow, diameter, density) => {
        const [q, d] = [airflow / 3600, diameter / 1000];
        const pressure = one(velocitypressure([[(4 * q) / (Math.PI * d * d)]], [[density]], [["SI"]]));
        const loss = (64 / si(airflow, diameter, density) / d) * pressure;
        expect(relative(loss, (128 * 1.819e-5 * q) / (Math.PI * d ** 4))).toBeLessThan(1e-12);
      }),
    );
  });

  test("answers a column, blank rows blank and a wrong one as an error", () => {
    const answers = reynolds([[400], [null], [-1]], [[4]]).map(([cell]) => shown(cell));
    expect(answers.slice(1)).toEqual(["", "#VALUE! airflow must be at least 0 cfm; got -1"]);
  });

  test("refuses what is no duct", () => {
    expect(refusal(() => reynolds([[400]], [[0]]))).toEqual({
      code: "#VALUE!",
      message: "diameter must be above 0 in; got 0",
    });
  });
});
