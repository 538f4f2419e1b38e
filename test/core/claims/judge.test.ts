import fc from "fast-check";
import { hoseLoss, judgeHose, judgeInlet, judgeVelocity, lengthThatTakes } from "../../../src/core/claims/judgeAir";
import { judgeTipPressure, judgeWheelFlow } from "../../../src/core/claims/judgeFan";
import { judgeCurvePower, judgeRatedPower, judgeSupply } from "../../../src/core/claims/judgePower";
import { relative } from "../../support/printed";

const looks = { roundedEnd: 0.03, bareEnd: 0.93, leastWall: 0.001, usualWall: 0.003 };

describe("the judgements", () => {
  // By hand: 28 m/s and 64 m/s through 0.007853982 m2 are 0.2199115 and 0.5026548 m3/s.
  test("ask for the pressure from 28 m/s, doubt from 64 m/s, and never call a velocity impossible", () => {
    const verdicts = [0.2199, 0.22, 0.5026, 0.5027, 20].map((airflow) => judgeVelocity(airflow, 0.1).verdict);
    expect(verdicts).toEqual(["holds", "cannot tell", "cannot tell", "doubtful", "doubtful"]);
  });

  // By hand: in air of 1.201385 kg/m3 1000 Pa draw sqrt(2000 / (0.93 x 1.201385)) x 0.007853982 = 0.332294 m3/s through a bare end.
  test("never call an airflow impossible that a rounded end lets pass", () => {
    const judged = (airflow: number) => judgeInlet(airflow, 1000, 0.1, looks);
    expect(relative(judged(0.3).allowed!, 0.332294)).toBeLessThan(1e-5);
    expect([0.332, 0.333, 1.84, 1.86].map((airflow) => judged(airflow).verdict)).toEqual([
      "holds",
      "cannot tell",
      "cannot tell",
      "doubtful", // 0.332294 x sqrt(0.93 / 0.03) = 1.8501
    ]);
  });

  test("know nothing of a hose without its length", () => {
    expect(judgeHose(9, 100, { diameter: 0.1, length: null }, looks, true)).toEqual({
      claimed: 9,
      allowed: null,
      verdict: "cannot tell",
    });
  });

  test("tell the length of hose that takes the whole of a pressure", () => {
    const airflows = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(airflows, fc.double({ min: 1000, max: 20_000, noNaN: true }), (airflow, pressure) => {
        const length = lengthThatTakes(pressure, airflow, 0.1, 0.003, 0.93);
        const taken = hoseLoss(airflow, { diameter: 0.1, length }, 0.003, 0.93);
        if (length > 0) expect(relative(taken, pressure)).toBeLessThan(1e-9);
        else expect(taken).toBeGreaterThanOrEqual(pressure);
      }),
    );
  });

  // By hand: 1 m3/s x 2000 Pa / 4 = 500 W; 500 / 0.65 = 769.2 W.
  test("doubt a curve of 500 W below 769 W of motor, and forbid it never", () => {
    expect([1, 769, 770].map((motor) => judgeCurvePower(1, 2000, motor, 0.65).verdict)).toEqual([
      "doubtful",
      "doubtful",
      "holds",
    ]);
  });

  // By hand: 1 m3/s at 2000 Pa: 2000 W, squeezed 99 325 x ln(101 325 / 99 325) = 1980.1 W; / 1.4 = 1414.4 W; 2000 / 0.65 = 3076.9 W.
  test("forbid a rated point of 2000 W below 1414 W of motor", () => {
    expect([1414, 1415, 3076, 3077].map((motor) => judgeRatedPower({ airflow: 1, pressure: 2000 }, null, motor, 0.65).verdict)).toEqual([
      "impossible",
      "doubtful",
      "doubtful",
      "holds",
    ]); // prettier-ignore
  });

  test("forbid by a supply of unknown phases only what three of them forbid", () => {
    const judged = (phases: 1 | 3 | null, power: number) =>
      judgeSupply(power, { volts: 100, amps: 10, phases }).verdict;
    expect(judged(1, 1401)).toBe("impossible"); // 1.4 x 1000
    expect(judged(null, 1401)).toBe("cannot tell"); // 0.85 x 1732 = 1472
    expect(judged(null, 2424)).toBe("doubtful");
    expect(judged(null, 2425)).toBe("impossible"); // 1.4 x 1732.05 = 2424.9
  });

  test("forbid a tip pressure only of a wheel whose kind and stages are known", () => {
    const wheel = { diameter: 0.3, speed: 50, stages: 1, bounded: true } as const;
    const judged = (change: object) => judgeTipPressure(9000, { ...wheel, ...change }, 1.2).verdict;
    expect(judged({})).toBe("impossible"); // 1.2 x 2700 Pa
    for (const change of [{ stages: null }, { bounded: null }, { bounded: false }])
      expect(judged(change)).toBe("cannot tell");
  });

  test("leave the rim out where the kind is not known to be bounded", () => {
    const wheel = { diameter: 0.3, speed: 50, stages: 1, width: 0.001 } as const;
    const judged = (bounded: boolean | null) =>
      judgeWheelFlow(0.5, { ...wheel, bounded }, { low: 0.3, high: 0.3 }).verdict;
    expect([judged(true), judged(false), judged(null)]).toEqual(["doubtful", "holds", "holds"]);
  });
});
