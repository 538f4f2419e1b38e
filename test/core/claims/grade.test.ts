import fc from "fast-check";
import { grade } from "../../../src/core/claims/grade";

const order = ["holds", "doubtful", "impossible"];

describe("grade", () => {
  test.each([
    [1, "holds"],
    [2, "holds"],
    [2.01, "doubtful"],
    [3, "doubtful"],
    [3.01, "impossible"],
  ])("%p against 2 and 3: %s", (claimed, verdict) => expect(grade(claimed, 2, 3)).toBe(verdict));

  test("forbids nothing where physics does not", () => expect(grade(1e30, 2, Infinity)).toBe("doubtful"));

  test("never gives a larger number the better verdict", () => {
    const number = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(number, number, number, number, (a, b, c, d) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const [doubted, impossible] = [Math.min(c, d), Math.max(c, d)];
        expect(order.indexOf(grade(more, doubted, impossible))).toBeGreaterThanOrEqual(
          order.indexOf(grade(less, doubted, impossible)),
        );
      }),
    );
  });
});
