import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { lossCoefficient } from "../../../src/core/fittings/lossCoefficient";
import { valuesBehind } from "../../../src/core/fittings/valuesBehind";
import { findNamed } from "../../../src/core/naming/findNamed";
import { lossFamilies } from "../../../src/reference/lossFamilies";
import type { LossFamily } from "../../../src/reference/schema";

const family = (name: string): LossFamily => findNamed(lossFamilies, name)!;
const bases = (name: string, shape: number | null, angle: number | null): string[] =>
  valuesBehind(family(name), shape, angle).map(({ basis }) => basis);

describe("valuesBehind", () => {
  // As the tables say: of the 3-piece elbow 1.5 was read in a copy, 1 and 2 in the book; of the branch only 45 degrees is read;
  // of the mitre 45 degrees is from memory, 30 and 60 are read.
  test.each([
    ["elbow 3-piece", 1.5, null, ["second-hand"]],
    ["elbow 3-piece", 1, null, ["read"]],
    ["elbow 3-piece", 1.75, null, ["second-hand", "read"]],
    ["branch", null, null, ["read"]],
    ["branch", null, 30, ["from memory"]],
    ["branch", null, 42, ["from memory", "read"]],
    ["mitre", null, 50, ["from memory", "read"]],
    ["plain end", null, null, ["read"]],
  ] as const)("of %s at %p and %p rests on what is %p", (name, shape, angle, expected) => {
    expect(bases(name, shape, angle)).toEqual(expected);
  });

  test("takes the usual shape and angle where none is given, as the coefficient does", () => {
    expect(valuesBehind(family("elbow smooth"), null, null)).toEqual(valuesBehind(family("elbow smooth"), 1.5, 90));
    expect(valuesBehind(family("cone"), 0.25, null)).toEqual(valuesBehind(family("cone"), 0.25, 90));
  });

  test("adds the multipliers of an elbow's turn, and none at 90 degrees", () => {
    expect(valuesBehind(family("elbow smooth"), 1.5, 90)).toHaveLength(1);
    expect(valuesBehind(family("elbow smooth"), 1.5, 45)).toHaveLength(2);
    expect(valuesBehind(family("elbow smooth"), 1.5, 70)).toHaveLength(3);
  });

  test("refuses what the coefficient refuses", () => {
    expect(() => valuesBehind(family("elbow smooth"), 9, null)).toThrow(DomainError);
    expect(() => valuesBehind(family("elbow smooth"), 9, null)).toThrow(/shape must be from 0\.5 to 2\.5/);
  });

  // The meaning of "rests on": another value of such a point is another coefficient, another value of any other point is not.
  test("are the points with another value of which the coefficient would be another", () => {
    const input = fc.record({
      of: fc.constantFrom(...lossFamilies),
      shape: fc.double({ min: 0, max: 1, noNaN: true }),
      angle: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    const along = (values: readonly (number | null)[], share: number): number | null => {
      const known = values.filter((value) => value !== null);
      return known.length === 0 ? null : Math.min(...known) + share * (Math.max(...known) - Math.min(...known));
    };
    let asked = 0;
    fc.assert(
      fc.property(input, ({ of, shape: x, angle: y }) => {
        const shape = of.rule === "expansion" ? 0.5 : along(of.points.map((point) => point.shape), x); // prettier-ignore
        const angle = of.rule === "elbow" ? 90 : along(of.points.map((point) => point.angle), y); // prettier-ignore
        let coefficient: number;
        try {
          coefficient = lossCoefficient(of, shape, angle);
        } catch {
          return; // a row that does not reach so far
        }
        if (of.rule === "expansion" && coefficient === (1 - 0.5) ** 2) return; // the abrupt step's, whatever the points say
        asked++;
        const behind = new Set(valuesBehind(of, shape, angle));
        for (const point of of.points) {
          const points = of.points.map((one) => (one === point ? { ...one, coefficient: one.coefficient + 1 } : one));
          const changed = lossCoefficient({ ...of, points }, shape, angle);
          if (!behind.has(point)) expect(changed).toBe(coefficient);
        }
        const all = of.points.map((one) => (behind.has(one) ? { ...one, coefficient: one.coefficient + 1 } : one));
        expect(lossCoefficient({ ...of, points: all }, shape, angle)).toBeGreaterThan(coefficient);
      }),
      { numRuns: 300 },
    );
    expect(asked).toBeGreaterThan(200);
  });
});
