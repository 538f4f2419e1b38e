import fc from "fast-check";
import { cholesky, solveTriangle } from "../../../src/core/numeric/cholesky";
import { dot } from "../../../src/core/numeric/dot";

describe("cholesky", () => {
  // By hand: [[4, 2, -2], [2, 10, 2], [-2, 2, 6]] = L L' with L = [[2], [1, 3], [-1, 1, 2]].
  const matrix = [[4], [2, 10], [-2, 2, 6]];

  test("finds the triangle of a matrix made by hand", () => {
    expect(cholesky(matrix).map((row) => [...row])).toEqual([[2], [1, 3], [-1, 1, 2]]);
  });

  // x = (1, 2, 3): 4 + 4 - 6 = 2, 2 + 20 + 6 = 28, -2 + 4 + 18 = 20.
  test("and the x behind a right side", () => {
    expect([...solveTriangle(cholesky(matrix), [2, 28, 20])]).toEqual([1, 2, 3]);
  });

  test.each([[[[0]]], [[[1], [1, 1]]], [[[1], [2, 1]]], [[[NaN]]]])(
    "refuses what is not positive definite: %j",
    (wrong) => {
      expect(() => cholesky(wrong)).toThrow(RangeError);
      expect(() => cholesky(wrong)).toThrow(`not positive definite in row ${wrong.length}`);
    },
  );

  test("A x gives the right side back, for any sum of squares with 1 on the diagonal", () => {
    const size = 4;
    const row = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: size, maxLength: size });
    fc.assert(
      fc.property(fc.array(row, { minLength: size, maxLength: size }), row, (factors, right) => {
        const full = factors.map((one, i) => factors.map((other, j) => dot(one, other) + (i === j ? 1 : 0)));
        const x = solveTriangle(cholesky(full), right);
        full.forEach((line, index) => expect(Math.abs(dot(line, x) - right[index]!)).toBeLessThan(1e-10));
      }),
    );
  });
});
