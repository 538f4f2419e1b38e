import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { lossCoefficient } from "../../../src/core/fittings/lossCoefficient";
import { findNamed } from "../../../src/core/naming/findNamed";
import { elbowAngleMultiplier } from "../../../src/reference/fittings/elbowAngleMultiplier";
import { lossFamilies } from "../../../src/reference/lossFamilies";
import type { LossFamily, LossPoint } from "../../../src/reference/schema";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const family = (name: string): LossFamily => findNamed(lossFamilies, name)!;
const k = (name: string, shape: number | null = null, angle: number | null = null): number =>
  lossCoefficient(family(name), shape, angle);

/** The coefficient at a printed point; an elbow's points are for 90 degrees, an expansion's are shares. */
const atPoint = (of: LossFamily, { shape, angle, coefficient }: LossPoint): { ours: number; printed: number } => {
  if (of.rule === "elbow") return { ours: lossCoefficient(of, shape, 90), printed: coefficient };
  if (of.rule === "expansion") return { ours: lossCoefficient(of, 0.1, angle) / (1 - 0.01), printed: coefficient };
  return { ours: lossCoefficient(of, shape, angle), printed: coefficient };
};

const sorted = (values: readonly (number | null)[]): number[] =>
  [...new Set(values.filter((value) => value !== null))].sort((a, b) => a - b);

// Printed rows, each with its source, stand in test/published/data: elbows, otherFittings, derivedFittings, hoodEntries, cones.
describe("lossCoefficient", () => {
  test.each(lossFamilies)("of $key is every printed point itself", (of) => {
    for (const point of of.points) {
      const { ours, printed } = atPoint(of, point);
      expect(Math.abs(ours - printed)).toBeLessThanOrEqual(1e-12);
    }
  });

  test.each(lossFamilies.filter((of) => of.shape !== null && of.rule !== "expansion"))(
    "of $key lies between the two shapes around it",
    (of) => {
      const angles = of.angle === null || of.rule === "elbow" ? [null] : sorted(of.points.map(({ angle }) => angle));
      for (const angle of angles) {
        const shapes = sorted(
          of.points.filter((point) => angle === null || point.angle === angle).map(({ shape }) => shape),
        );
        shapes.slice(1).forEach((above, index) => {
          const [low, high] = [lossCoefficient(of, shapes[index]!, angle), lossCoefficient(of, above, angle)].sort(
            (a, b) => a - b,
          );
          for (const share of [0.1, 0.5, 0.9]) {
            const between = lossCoefficient(of, shapes[index]! + share * (above - shapes[index]!), angle);
            expect(between).toBeGreaterThanOrEqual(low! - 1e-12);
            expect(between).toBeLessThanOrEqual(high! + 1e-12);
          }
        });
      }
    },
  );

  test.each(lossFamilies.filter((of) => of.angle !== null))("of $key lies between the two angles around it", (of) => {
    const shapes =
      of.rule === "expansion" ? [0.1] : of.shape === null ? [null] : sorted(of.points.map(({ shape }) => shape));
    for (const shape of shapes) {
      const row = of.points.filter((point) => of.shape === null || of.rule === "expansion" || point.shape === shape);
      const angles =
        of.rule === "elbow" ? elbowAngleMultiplier.map(({ angle }) => angle) : sorted(row.map(({ angle }) => angle));
      angles.slice(1).forEach((above, index) => {
        const [low, high] = [lossCoefficient(of, shape, angles[index]!), lossCoefficient(of, shape, above)].sort(
          (a, b) => a - b,
        );
        for (const share of [0.25, 0.75]) {
          const between = lossCoefficient(of, shape, angles[index]! + share * (above - angles[index]!));
          expect(between).toBeGreaterThanOrEqual(low! - 1e-12);
          expect(between).toBeLessThanOrEqual(high! + 1e-12);
        }
      });
    }
  });

  // Table A-7: 0.15 at r/D 1.5, 0.13 at 2; the angle's multiplier is 0.6 at 45 degrees, 0.78 at 60, 0.9 at 75 and 1.0 at 90.
  test("of an elbow is the value for 90 degrees times the multiplier of its turn", () => {
    expect(relative(k("elbow smooth", 1.5, 45), 0.15 * 0.6)).toBeLessThan(1e-12);
    expect(relative(k("elbow smooth", 1.75, 90), 0.14)).toBeLessThan(1e-12);
    expect(relative(k("elbow smooth", 1.75, 60), 0.14 * 0.78)).toBeLessThan(1e-12);
    expect(relative(k("elbow smooth", 1.5, 70), 0.15 * 0.86)).toBeLessThan(1e-12); // two thirds of the way from 0.78 to 0.9
    expect(k("elbow smooth", 1.5, 0)).toBe(0);
  });

  test("takes the usual shape and angle where none is given: r/D 1.5, 90 degrees", () => {
    expect(k("elbow")).toBe(0.27);
    expect(k("elbow", 1)).toBe(0.37);
    expect(relative(k("elbow", null, 45), 0.27 * 0.6)).toBeLessThan(1e-12);
  });

  // Manual, table 6: 0.28 of the difference of velocity pressures at 10 degrees. Area ratio 0.25: VP2 = 0.0625 VP1.
  test("of an expansion is its share of (1 - ratio^2)", () => {
    expect(relative(k("expansion", 0.25, 10), 0.28 * (1 - 0.0625))).toBeLessThan(1e-12);
    expect(k("expansion", 1, 40)).toBe(0);
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        fc.double({ min: 5, max: 40, noNaN: true }),
        (ratio, angle) => {
          expect(k("expansion", ratio + 0.05, angle)).toBeLessThan(k("expansion", ratio, angle));
        },
      ),
    );
  });

  // (1 - 0.64)^2 = 0.1296, where 10 degrees would give 0.28 (1 - 0.4096) = 0.1653.
  test("of an expansion is never more than Borda and Carnot's of the abrupt step", () => {
    expect(relative(k("expansion", 0.64, 10), 0.1296)).toBeLessThan(1e-12);
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 5, max: 40, noNaN: true }),
        (ratio, angle) => {
          expect(k("expansion", ratio, angle)).toBeLessThanOrEqual((1 - ratio) ** 2);
          expect(k("expansion", ratio, angle)).toBeLessThanOrEqual(k("expansion abrupt", ratio) + 1e-12);
        },
      ),
    );
  });

  // ASHRAE Pocket Guide 2013, p 319, Table 9-4, prints 1.0 (flanged 0.5) at 0 degrees for the lengths that were read there, 0.025, 0.1 and
  // 0.6 (flanged 0.025, 0.075 and 0.15); the others follow, since at 0 degrees a cone is the bare end whatever its length.
  test.each([
    ["cone", 0.05, 1],
    ["cone", 0.25, 1],
    ["cone", 1, 1],
    ["cone flanged", 0.05, 0.5],
    ["cone flanged", 0.1, 0.5],
  ])("of a %s of length %p without any angle is that of the bare end: %p", (name, length, coefficient) =>
    expect(k(name, length, 0)).toBe(coefficient),
  );

  // Cone free: L/D 0.6 prints 0.13 at 60 and 0.27 at 120 degrees (90 was not read), L/D 1 prints 0.16 at 90.
  test("across two axes is linear along the angle first, then along the shape", () => {
    expect(relative(k("cone", 0.6, 90), (0.13 + 0.27) / 2)).toBeLessThan(1e-12);
    expect(relative(k("cone", 0.8, 90), ((0.13 + 0.27) / 2 + 0.16) / 2)).toBeLessThan(1e-12);
  });

  test("is never negative and never above the largest printed point, anywhere inside a table of two axes", () => {
    const tables = lossFamilies.filter((of) => of.rule === "table" && of.shape !== null && of.angle !== null);
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...tables), share, share, (of, x, y) => {
        const inside = (values: number[], part: number): number => values[0]! + part * (values.at(-1)! - values[0]!);
        const shape = inside(sorted(of.points.map((point) => point.shape)), x);
        // every row of a table reaches at least over the angles that all rows print
        const reach = sorted(of.points.map((point) => point.shape)).map((printed) =>
          sorted(of.points.filter((point) => point.shape === printed).map((point) => point.angle)),
        );
        const lowest = Math.max(...reach.map((angles) => angles[0]!));
        const highest = Math.min(...reach.map((angles) => angles.at(-1)!));
        const value = lossCoefficient(of, shape, inside([lowest, highest], y));
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(Math.max(...of.points.map((point) => point.coefficient)) + 1e-12);
      }),
    );
  });

  describe("refuses", () => {
    test.each<[string, number | null, number | null, string]>([
      ["elbow smooth", 3, null, 'shape must be from 0.5 to 2.5 for "elbow smooth" (r/D); got 3'],
      [
        "elbow smooth",
        45,
        null,
        'shape must be from 0.5 to 2.5 for "elbow smooth" (r/D; a turn comes after it, as in "elbow smooth 1.5 45"); got 45',
      ],
      [
        "elbow smooth",
        10,
        null,
        'shape must be from 0.5 to 2.5 for "elbow smooth" (r/D; a turn comes after it, as in "elbow smooth 1.5 10"); got 10',
      ],
      ["elbow smooth", 0.4, 90, 'shape must be from 0.5 to 2.5 for "elbow smooth" (r/D); got 0.4'],
      ["elbow smooth", 1.5, 190, 'angle must be from 0 to 180 degrees for "elbow smooth" (turn); got 190'],
      [
        "elbow stamped",
        0.5,
        90,
        'shape must be from 75 to 254 mm (2.95 to 10 in) for "elbow stamped" (diameter); got 500',
      ],
      ["elbow stamped", null, 90, 'shape must be given for "elbow stamped" (diameter); got a blank cell'],
      ["elbow stamped", 0.1, 30, 'angle must be from 45 to 90 degrees for "elbow stamped" (turn); got 30'],
      ["branch", null, 5, 'angle must be from 10 to 90 degrees for "branch" (angle between the axes); got 5'],
      ["branch", 1, 45, 'shape must be left out: "branch" has no shape; got 1'],
      ["exit", null, 45, 'angle must be left out: "exit" has no angle; got 45'],
      [
        "contraction",
        null,
        null,
        'shape must be given for "contraction" (area ratio, entering / leaving); got a blank cell',
      ],
      ["contraction", 11, 90, 'shape must be from 1 to 10 for "contraction" (area ratio, entering / leaving); got 11'],
      [
        "expansion",
        1.2,
        20,
        'shape must be above 0 and at most 1 for "expansion" (area ratio, small / large); got 1.2',
      ],
      ["expansion", 0, 20, 'shape must be above 0 and at most 1 for "expansion" (area ratio, small / large); got 0'],
      ["expansion", 0.5, 4, 'angle must be from 5 to 40 degrees for "expansion" (included angle); got 4'],
      ["cone", 0.6, 190, 'angle must be from 0 to 180 degrees for "cone" (included angle); got 190'],
      [
        "weather cap",
        NaN,
        null,
        'shape must be from 0.45 to 1 for "weather cap" (height h/D); got a number that is not finite',
      ],
    ])("%s at shape %p, angle %p", (name, shape, angle, message) => {
      expectRefusal(() => k(name, shape, angle), DomainError, message);
    });

    test.each([
      [2, "2"],
      [null, "1.5"],
    ])("a turn in the place of r/D, with the family's usual r/D of %p before the turn", (usual, shown) => {
      const smooth = family("elbow smooth");
      expectRefusal(
        () => lossCoefficient({ ...smooth, shape: { ...smooth.shape!, usual } }, 45, null),
        DomainError,
        `shape must be from 0.5 to 2.5 for "elbow smooth" (r/D; a turn comes after it, as in "elbow smooth ${shown} 45"); got 45`,
      );
    });

    test.each(lossFamilies.filter((of) => of.shape !== null && of.rule !== "expansion"))(
      "$key outside its printed shapes, and says in short numbers how far they reach",
      (of) => {
        const shapes = sorted(of.points.map(({ shape }) => shape));
        const angle = of.angle === null ? null : (sorted(of.points.map((point) => point.angle))[0] ?? of.angle.usual);
        for (const beyond of [shapes[0]! - 0.001, shapes.at(-1)! + 0.001]) {
          expect(() => lossCoefficient(of, beyond, angle)).toThrow(DomainError);
          expect(() => lossCoefficient(of, beyond, angle)).toThrow(
            /^shape must be from [\d.]{1,6} to [\d.]{1,6}( mm \([\d.]{1,6} to [\d.]{1,6} in\))? for "/,
          );
        }
      },
    );
  });
});
