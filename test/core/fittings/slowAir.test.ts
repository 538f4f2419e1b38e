import fc from "fast-check";
import { coefficientInAir, mitreCoefficient, mitreInSlowAir } from "../../../src/core/fittings/slowAir";
import { parseFittingList } from "../../../src/core/fittings/fittingList";
import { relative } from "../../support/printed";

// The printed points themselves stand in test/published/data/derivedFittings.ts.
describe("a mitre in slow air", () => {
  // Halfway between the printed 1.26 at 20 000 and 1.14 at 40 000; below the table its first value, above it 1.
  test.each([
    [0, 1.4],
    [9_000, 1.4],
    [30_000, 1.2],
    [140_000, 1],
    [2e6, 1],
  ])("at a Reynolds number of %p loses %p times as much as printed", (reynolds, times) =>
    expect(relative(mitreInSlowAir(reynolds).times, times)).toBeLessThan(1e-12),
  );

  test("loses the more the faster the air is, and its multiplier has the slope of its line", () => {
    const numbers = fc.double({ min: 100, max: 300_000, noNaN: true });
    const loss = (reynolds: number): number => reynolds ** 2 * mitreInSlowAir(reynolds).times;
    fc.assert(
      fc.property(numbers, numbers, (a, b) => {
        fc.pre(b > a * (1 + 1e-9));
        expect(loss(b)).toBeGreaterThan(loss(a));
      }),
    );
    // 0.12 over 20 000 between the printed 20 000 and 40 000.
    expect(relative(mitreInSlowAir(33_000).slope, -0.12 / 20_000)).toBeLessThan(1e-12);
    expect(mitreInSlowAir(5_000).slope).toBe(0);
    expect(mitreInSlowAir(200_000).slope).toBe(0);
  });

  // 2 x 0.55 of mitres, 0.3 of a bare K; at Re 40 000 the mitres count 1.14 times: 1.1 x 1.14 + 0.3 = 1.554.
  test("is the only one of a list that does", () => {
    const list = parseFittingList("fitting", "miter 60 x2; 0.3", 0.0254, "any");
    expect(relative(mitreCoefficient(list), 1.1)).toBeLessThan(1e-12);
    expect(relative(coefficientInAir(list, 0.1, 40_000), 1.554)).toBeLessThan(1e-12);
    expect(mitreCoefficient(parseFittingList("fitting", "mitre saw", 0.0254, "any"))).toBe(0);
  });
});
