import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { junctionOf, legLoss, type MeetingDuct, pushOf } from "../../../src/core/fittings/junction";
import { junctionLoss, type OneBranch } from "../../../src/core/fittings/junctionLoss";

const area = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
const one: OneBranch = {
  angle: 45,
  branchairflow: 0.2,
  mainairflow: 0.5,
  branchdiameter: 0.1,
  maindiameter: 0.15,
  straightdiameter: null,
  density: 1.2,
};
/** Velocity pressure of the main, on which the source has its K. */
const ofMain = ({ mainairflow, maindiameter, density }: OneBranch): number =>
  (density / 2) * (mainairflow / area(maindiameter)) ** 2;
const kOf = (junction: OneBranch, leg: "branch" | "straight"): number => junctionLoss(junction, leg) / ofMain(junction);

/** Losses of all legs of a junction at these airflows. */
const losses = (main: number, ducts: readonly MeetingDuct[], airflows: readonly number[]): number[] => {
  const junction = junctionOf(main, ducts, 1.2);
  const all = airflows.reduce((sum, one_) => sum + one_, 0);
  return ducts.map((_, place) => legLoss(junction, place, airflows[place]!, all, pushOf(junction, airflows)).loss);
};

describe("the loss at a junction", () => {
  const tee: OneBranch = { ...one, angle: 90, branchdiameter: 0.1023, maindiameter: 0.1023 };

  // By hand, the equations as documented with y = 0.25: C = 0.9 x 0.75 = 0.675; branch 0.675 (1 + 0.0625 - 2 x 0.5625) = -0.0421875;
  // straight 1.55 x 0.25 - 0.0625 = 0.325.
  test("of a tee a quarter of whose air comes from aside, by hand", () => {
    const quarter = { ...tee, branchairflow: 0.01, mainairflow: 0.04 };
    expect(kOf(quarter, "branch")).toBeCloseTo(-0.0421875, 12);
    expect(kOf(quarter, "straight")).toBeCloseTo(0.325, 12);
  });

  // By hand: a branch of a quarter of the main's area at 60 degrees (2 cos = 1), y = 0.5: C = 1;
  // branch 1 + 4 - 2 x 0.25 - 4 x 0.25 = 3.5; straight 1 - 0.25 - 4 x 0.25 = -0.25.
  test("of a narrow branch at 60 degrees, by hand", () => {
    const narrow = { ...one, angle: 60, branchdiameter: 0.1, maindiameter: 0.2, branchairflow: 0.2, mainairflow: 0.4 };
    expect(kOf(narrow, "branch")).toBeCloseTo(3.5, 12);
    expect(kOf(narrow, "straight")).toBeCloseTo(-0.25, 12);
  });

  // By hand, nothing from aside, a straight duct of half the main's area: 1 + 4 - 2 x 2 = 1 = (1 - 2)^2, the abrupt widening of Borda and Carnot.
  test("of a straight duct alone is that of the abrupt widening", () => {
    const alone = { ...one, branchairflow: 0, maindiameter: 0.2, straightdiameter: 0.2 / Math.SQRT2 };
    expect(kOf(alone, "straight")).toBeCloseTo(1, 12);
    expect(kOf({ ...alone, straightdiameter: 0.2 }, "straight")).toBeCloseTo(0, 12);
  });

  // By hand: two ducts of half the main's area each, at 30 degrees to it, half of the air in each: all have one velocity, so
  // each loses 1 + 1 - 2 cos 30 of its velocity pressure.
  test("of a symmetrical wye is the turn's alone where no air changes its speed", () => {
    const leg = { area: 0.01, angle: 30 };
    const [first, second] = losses(0.02, [leg, leg], [0.2, 0.2]);
    expect(first).toBeCloseTo((2 - Math.sqrt(3)) * 0.6 * 20 ** 2, 9);
    expect(second).toBeCloseTo(first!, 12);
  });

  // The printed factor is of a straight duct as wide as the main; where all that meet have the main's area together it is 1.
  test("has the printed factor only as far as the straight duct is as wide as the main", () => {
    const balance = (straight: number): number => {
      const [p, b, s] = [0.5 / 0.02, 0.2 / 0.01, 0.3 / straight].map((speed) => 0.6 * speed ** 2) as [number, number, number]; // prettier-ignore
      return p + b - 2 * Math.SQRT1_2 * b * 0.5 - 2 * s * (straight / 0.02);
    };
    const at = (straight: number): number =>
      losses(0.02, [{ area: 0.01, angle: 45 }, { area: straight, angle: null }], [0.2, 0.3])[0]! / balance(straight); // prettier-ignore
    expect(at(0.02)).toBeCloseTo(0.55, 12); // y = 0.4
    expect(at(0.01)).toBeCloseTo(1, 12);
    expect(at(0.015)).toBeCloseTo(0.775, 12);
  });

  test("is nothing where nothing flows, and finite where it runs backwards", () => {
    expect(junctionLoss({ ...one, branchairflow: 0, mainairflow: 0 }, "branch")).toBe(0);
    const junction = junctionOf(0.02, [{ area: 0.01, angle: 45 }, { area: 0.02, angle: null }], 1.2); // prettier-ignore
    for (const [own, main] of [
      [-0.1, 0.2],
      [0.1, -0.2],
      [-0.1, 0],
      [0.3, 0.2],
    ] as const)
      // prettier-ignore
      for (const place of [0, 1])
        expect(Object.values(legLoss(junction, place, own, main, 5)).every(Number.isFinite)).toBe(true);
  });

  // Momentum brought is at most what the same air has along its own way, so the balance alone never makes energy:
  // sum Q_i (p_m + p_i - push) = sum Q_i ((v_m - v_i cos)^2 + (v_i sin)^2) rho / 2. The factor lessens what a wide branch loses.
  test("never gives more power back than it takes, with narrow branches", () => {
    const duct = fc.record({ area: fc.double({ min: 0.001, max: 0.0035, noNaN: true }), angle: fc.option(fc.double({ min: 10, max: 60, noNaN: true })) }); // prettier-ignore
    fc.assert(
      fc.property(fc.array(fc.tuple(duct, fc.double({ min: 0, max: 0.3, noNaN: true })), { minLength: 1, maxLength: 4 }), (legs) => {
        const flows = legs.map(([, flow]) => flow);
        const each = losses(0.01, legs.map(([one_]) => one_), flows); // prettier-ignore
        const all = flows.reduce((sum, flow) => sum + flow, 0);
        const power = each.reduce((sum, loss, place) => sum + loss * flows[place]!, 0);
        expect(power).toBeGreaterThanOrEqual(-1e-9 * (1 + 0.6 * all * (all / 0.01) ** 2));
      }),
    ); // prettier-ignore
  });

  test("has the slopes that its differences have", () => {
    const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const ducts = fc.tuple(span(0.003, 0.02), span(10, 90), span(0.01, 0.03));
    fc.assert(
      fc.property(ducts, span(0.01, 0.3), span(0.01, 0.3), fc.integer({ min: 0, max: 1 }), (sizes, branch, on, place) => {
        const [wide, angle, straight] = sizes;
        const junction = junctionOf(0.02, [{ area: wide, angle }, { area: straight, angle: null }], 1.2); // prettier-ignore
        const [own, main] = [place === 0 ? branch : on, branch + on];
        fc.pre(Math.abs(own / main - 7 / 18) > 1e-3); // where the factor reaches its least
        const push = pushOf(junction, [branch, on]);
        const at = (a: number, b: number, c: number): number => legLoss(junction, place, a, b, c).loss;
        const { loss, byOwn, byMain, byPush } = legLoss(junction, place, own, main, push);
        const size = 1e-6 * (Math.abs(loss) + push + main / 0.02);
        const [h, p] = [1e-6, 1e-3];
        expect(Math.abs((at(own + h, main, push) - at(own - h, main, push)) / (2 * h) - byOwn) * main).toBeLessThan(size);
        expect(Math.abs((at(own, main + h, push) - at(own, main - h, push)) / (2 * h) - byMain) * main).toBeLessThan(size);
        expect((at(own, main, push + p) - at(own, main, push - p)) / (2 * p)).toBeCloseTo(byPush, 6);
      }),
    ); // prettier-ignore
  });

  test("does not jump with the share of the air", () => {
    const at = (share: number): number => kOf({ ...tee, branchairflow: share * tee.mainairflow }, "branch");
    for (const share of [0, 0.3888888, 0.4, 0.999]) expect(Math.abs(at(share + 1e-7) - at(share))).toBeLessThan(1e-6);
  });

  test.each([
    [{ angle: 5 }, "angle must be from 10 to 90 degrees; got 5"],
    [{ angle: NaN }, "angle must be from 10 to 90 degrees; got a number that is not finite"],
    [{ branchairflow: 0.6 }, "branchairflow must be from 0 to 0.5 m³/s; got 0.6"],
    [{ mainairflow: -1 }, "mainairflow must be at least 0 m³/s; got -1"],
    [{ branchdiameter: 0 }, "branchdiameter must be above 0"],
    [{ straightdiameter: -0.1 }, "straightdiameter must be above 0"],
    [{ density: 0 }, "density must be from 0.2 to 5 kg/m³; got 0"],
  ])("refuses %j", (wrong, sentence) => {
    const refused = (): unknown => junctionLoss({ ...one, ...wrong }, "branch");
    expect(refused).toThrow(DomainError);
    expect(refused).toThrow(sentence);
  });
});
