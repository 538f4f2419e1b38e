import {
  judgeFaceVelocity,
  judgePassage,
  judgePower,
  judgeSystemAirflow,
  judgeTipPressure,
  judgeVelocity,
} from "../../../src/core/claims/judge";
import { relative } from "../../support/printed";

const bareEnd = { diameter: 0.1, length: 0, roughness: 0.001, entry: 0.93, density: 1.2 };

describe("the judgements", () => {
  // By hand: 28 m/s (DGUV 209-044: faster at a port is not sensible) through 0.007853982 m2 is 0.2199115 m3/s.
  test("doubt a velocity from 28 m/s, and never call it impossible", () => {
    expect(judgeVelocity(0.2199, 0.1).verdict).toBe("holds");
    expect(judgeVelocity(0.22, 0.1).verdict).toBe("doubtful");
    expect(judgeVelocity(20, 0.1).verdict).toBe("doubtful");
  });

  // By hand: 1000 Pa draw at most 0.3324856 m3/s through that end.
  test("call an airflow impossible that the pressure cannot draw through a bare end", () => {
    expect(judgePassage(0.3324, 1000, bareEnd).verdict).toBe("holds");
    expect(judgePassage(0.3325, 1000, bareEnd).verdict).toBe("impossible");
    expect(relative(judgePassage(0.3, 1000, bareEnd).allowed, 0.3324856)).toBeLessThan(1e-6);
  });

  test("doubt every free-air airflow as one on a system, and show two thirds of it", () => {
    const { verdict, allowed } = judgeSystemAirflow(0.6);
    expect(verdict).toBe("doubtful");
    expect(allowed).toBeCloseTo(0.4, 12);
  });

  // By hand: 1 m3/s x 2000 Pa / 4 = 500 W; 500 / 0.65 = 769.2 W.
  test("hold an air power of 500 W against the motor: impossible below 500 W, doubtful below 769 W", () => {
    expect(judgePower(1, 2000, 499).verdict).toBe("impossible");
    expect(judgePower(1, 2000, 501).verdict).toBe("doubtful");
    expect(judgePower(1, 2000, 769).verdict).toBe("doubtful");
    expect(judgePower(1, 2000, 770).verdict).toBe("holds");
  });

  // By hand: 2664.793 Pa is the bound of 0.3 m at 50 turns a second, three quarters of it 1998.595 Pa.
  test("hold a pressure against the tip speed: doubted from 1998.6 Pa, impossible from 2664.8 Pa", () => {
    expect(judgeTipPressure(1998, 0.3, 50, 1.2).verdict).toBe("holds");
    expect(judgeTipPressure(1999, 0.3, 50, 1.2).verdict).toBe("doubtful");
    expect(judgeTipPressure(2664, 0.3, 50, 1.2).verdict).toBe("doubtful");
    expect(judgeTipPressure(2665, 0.3, 50, 1.2).verdict).toBe("impossible");
  });

  test("doubt a filter that is faster than usual, and never call it impossible", () => {
    expect(judgeFaceVelocity(0.1, 10, 0.0178)).toEqual({ claimed: 0.01, allowed: 0.0178, verdict: "holds" });
    expect(judgeFaceVelocity(1, 1, 0.0178).verdict).toBe("doubtful");
  });
});
