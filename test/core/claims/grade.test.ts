import fc from "fast-check";
import { grade, type Verdict } from "../../../src/core/claims/grade";

const order: readonly Verdict[] = ["holds", "cannot tell", "doubtful", "impossible"];

describe("grade", () => {
  test.each([
    [1, "holds"],
    [2, "holds"],
    [2.01, "cannot tell"],
    [3, "cannot tell"],
    [3.01, "doubtful"],
    [4, "doubtful"],
    [4.01, "impossible"],
  ])("%p against 2, 3 and 4: %s", (claimed, verdict) =>
    expect(grade(claimed, { unknownFrom: 2, doubtedFrom: 3, impossibleFrom: 4 })).toBe(verdict),
  );

  test("forbids, doubts and asks nothing without a bound", () => {
    expect(grade(1e30, { unknownFrom: 2, doubtedFrom: 3 })).toBe("doubtful");
    expect(grade(1e30, { unknownFrom: 2 })).toBe("cannot tell");
    expect(grade(1e30, {})).toBe("holds");
  });

  test("never gives a larger number the better verdict", () => {
    const number = fc.double({ min: 0, max: 10, noNaN: true });
    const bounds = fc.record(
      { unknownFrom: number, doubtedFrom: number, impossibleFrom: number },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(number, number, bounds, (a, b, these) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((one) => order.indexOf(grade(one, these)));
        expect(more!).toBeGreaterThanOrEqual(less!);
      }),
    );
  });
});
