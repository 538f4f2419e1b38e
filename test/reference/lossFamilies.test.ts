import { elbowAngleMultiplier } from "../../src/reference/fittings/elbowAngleMultiplier";
import { mitreReynoldsMultiplier } from "../../src/reference/fittings/mitreReynoldsMultiplier";
import { lossFamilies, PLAIN_END } from "../../src/reference/lossFamilies";
import type { LossFamily, LossPoint } from "../../src/reference/schema";
import { repeated, rowOf, typed } from "./allRows";

const named = lossFamilies.map((family) => [family.key, family] as const);
const names = (family: LossFamily): string[] => [family.key, ...family.aliases];

/** The printed coefficient at a shape (mm for a diameter) and an angle. */
function printed(key: string, shape: number | null, angle: number | null): LossPoint {
  const family = rowOf(lossFamilies, key);
  const at = shape !== null && family.shape?.quantity === "diameter" ? shape / 1000 : shape;
  const found = family.points.filter((point) => point.shape === at && point.angle === angle);
  expect(found).toHaveLength(1);
  return found[0]!;
}

describe("names of fittings and hoods", () => {
  test("never mean two families, whatever the case, blanks and hyphens", () => {
    expect(repeated(lossFamilies.flatMap(names).map(typed))).toEqual([]);
  });

  test("are lower case and tidy", () => {
    const odd = (name: string) => name !== name.trim().toLowerCase() || /\s\s/.test(name) || name === "";
    expect(lossFamilies.flatMap(names).filter(odd)).toEqual([]);
  });

  test("never are or end in a number, so that a number behind a name is its shape or angle", () => {
    expect(lossFamilies.flatMap(names).filter((name) => /(^|[\s-])[\d.,]+$/.test(name))).toEqual([]);
  });

  test("never end in a count", () => {
    expect(lossFamilies.flatMap(names).filter((name) => /x\s?\d+$/.test(name))).toEqual([]);
  });

  test("plain elbow, the American mitre, and the default end are known", () => {
    const keyOf = (name: string) => lossFamilies.find((family) => names(family).includes(name))?.key;
    expect(keyOf("elbow")).toBe("elbow 4-piece");
    expect(keyOf("miter")).toBe("mitre");
    expect(keyOf("reducer")).toBe("contraction");
    expect(keyOf("blast gate")).toBe("gate");
    expect(rowOf(lossFamilies, PLAIN_END).kind).toBe("hood");
  });
});

describe.each(named)("%s", (_key, family) => {
  test("has points at places that differ", () => {
    expect(family.points.length).toBeGreaterThan(0);
    expect(repeated(family.points.map(({ shape, angle }) => `${shape}/${angle}`))).toEqual([]);
  });

  test("has points exactly on the axes that its rule reads", () => {
    const shaped = family.shape !== null && family.rule !== "expansion"; // its ratio enters by formula
    const angled = family.angle !== null && family.rule !== "elbow"; // its turn enters by multiplier
    expect(family.points.filter(({ shape }) => (shape !== null) !== shaped)).toEqual([]);
    expect(family.points.filter(({ angle }) => (angle !== null) !== angled)).toEqual([]);
  });

  test("has both axes where its rule is elbow or expansion", () => {
    if (family.rule === "table") return expect(family.points.length === 1 || family.shape || family.angle).toBeTruthy();
    expect(family.shape).not.toBeNull();
    expect(family.angle).not.toBeNull();
  });

  test("has coefficients from 0 to 200, and shares and angles that can be", () => {
    expect(family.points.filter(({ coefficient }) => !(coefficient >= 0 && coefficient <= 200))).toEqual([]);
    expect(family.points.filter(({ angle }) => angle !== null && !(angle >= 0 && angle <= 180))).toEqual([]);
    expect(family.points.filter(({ shape }) => shape !== null && !(shape >= 0 && shape <= 10))).toEqual([]);
    if (family.rule === "expansion") expect(family.points.filter(({ coefficient }) => coefficient > 1)).toEqual([]);
  });

  test("covers its whole range of angles at every shape, so that no gap refuses a person", () => {
    const angles = family.points.map(({ angle }) => angle ?? 0);
    for (const shape of new Set(family.points.map((point) => point.shape))) {
      const row = family.points.filter((point) => point.shape === shape).map(({ angle }) => angle ?? 0);
      const reach = [Math.min(...row), Math.max(...row)];
      if (family.angle !== null) expect([shape, ...reach]).toEqual([shape, Math.min(...angles), Math.max(...angles)]);
    }
  });

  test("takes usual values that its points reach", () => {
    const usualShape = family.shape?.usual ?? null;
    const shapes = family.points.map(({ shape }) => shape ?? NaN);
    if (usualShape !== null) {
      expect(usualShape).toBeGreaterThanOrEqual(Math.min(...shapes));
      expect(usualShape).toBeLessThanOrEqual(Math.max(...shapes));
    }
    const turns = family.rule === "elbow" ? elbowAngleMultiplier : family.points;
    const usualAngle = family.angle?.usual ?? null;
    if (usualAngle !== null) {
      expect(usualAngle).toBeGreaterThanOrEqual(Math.min(...turns.map(({ angle }) => angle ?? NaN)));
      expect(usualAngle).toBeLessThanOrEqual(Math.max(...turns.map(({ angle }) => angle ?? NaN)));
    }
  });

  test("has a note of at most 300 characters that ends as a sentence does", () => {
    expect(family.note).toMatch(/^.{1,299}\.$/);
  });
});

// Typed from the pages named, as printed; diameters in mm.
const samples: readonly (readonly [
  key: string,
  shape: number | null,
  angle: number | null,
  coefficient: number,
  page: string,
])[] = [
  ["elbow smooth", 0.5, null, 0.71, "SMACNA 4th ed., Table A-7"],
  ["elbow smooth", 1.5, null, 0.15, "SMACNA 4th ed., Table A-7"],
  ["elbow 5-piece", 1.5, null, 0.24, "SMACNA 4th ed., Table A-7"],
  ["elbow 4-piece", 0.75, null, 0.5, "SMACNA 4th ed., Table A-7"],
  ["elbow 4-piece", 1.5, null, 0.27, "SMACNA 4th ed., Table A-7"],
  ["elbow 3-piece", 1, null, 0.42, "ASHRAE 2009, CD3-12"],
  ["mitre", null, 60, 0.55, "SMACNA 4th ed., Table A-7"],
  ["elbow stamped", 100, 90, 0.21, "ASHRAE 2009, CD3-1"],
  ["elbow stamped", 100, 45, 0.13, "ASHRAE 2009, CD3-3"],
  ["elbow pleated", 150, 90, 0.43, "ASHRAE 2009, CD3-5"],
  ["elbow pleated", 250, 45, 0.17, "ASHRAE 2009, CD3-7"],
  ["elbow gored", 75, 90, 0.51, "ASHRAE 2009, CD3-9"],
  ["elbow gored", 150, 60, 0.21, "ASHRAE 2009, CD3-13"],
  ["elbow gored", 230, 45, 0.13, "ASHRAE 2009, CD3-14"],
  ["elbow 7-gore", 300, null, 0.08, "ASHRAE 2009, CD3-10"],
  ["branch", null, 45, 0.28, "filled sheet citing the ACGIH manual, 22nd ed."],
  ["contraction", 2, 40, 0.05, "SMACNA 1990, Table 14-12"],
  ["contraction", 4, 90, 0.17, "SMACNA 1990, Table 14-12"],
  ["contraction", 10, 180, 0.43, "SMACNA 1990, Table 14-12"],
  ["contraction abrupt", 0.5, null, 0.32, "ventilation manual, table 6"],
  ["expansion", null, 20, 0.45, "ventilation manual, table 6"],
  ["gate part open", 0.5, null, 2.35, "Idelchik, diagram 9-6"],
  ["gate part open without recess", 0.5, null, 2.06, "Idelchik, diagram 9-5"],
  ["gate part open in water", 0.375, null, 4.5, "Brater and King 1976"],
  ["tee of a project sheet", null, null, 0.96, "project sheet"],
  ["fan inlet elbow at two diameters", 1, null, 0.66, "ASHRAE system-effect factors of 1988"],
  ["plain end", null, null, 0.93, "certification-exam question bank"],
  ["flanged end", null, null, 0.5, "Witheridge, Fig 19"],
  ["grinder hood", null, null, 0.65, "29 CFR 1910.94, Table G-4"],
  ["grinder hood tapered", null, null, 0.45, "29 CFR 1910.94, Table G-4"],
  ["duct end in wall", 0.01, null, 0.68, "ASHRAE pocket guide 2013, 1-1"],
  ["duct end in wall medium", 0.5, null, 0.72, "ASHRAE pocket guide 2013, 1-1"],
  ["bell mouth", 0.06, null, 0.2, "ASHRAE 1977 and Idelchik 1989"],
  ["bell mouth free", 0.08, null, 0.2, "ASHRAE pocket guide 2013, 1-2"],
  ["cone", 0.25, 60, 0.17, "ASHRAE pocket guide 2013, 1-4"],
  ["cone", 1, 90, 0.16, "ASHRAE pocket guide 2013, 1-4"],
  ["cone", 0.025, 150, 0.57, "ASHRAE pocket guide 2013, 1-4"],
  ["cone flanged", 0.05, 60, 0.3, "ASHRAE pocket guide 2013, 1-5"],
  ["cone flanged", 0.15, 45, 0.16, "ASHRAE pocket guide 2013, 1-5"],
];

describe("printed coefficients", () => {
  test.each(samples)("%s at %p, %p degrees is %p (%s), and was read", (key, shape, angle, coefficient) => {
    const point = printed(key, shape, angle);
    expect(point.coefficient).toBe(coefficient);
    expect(["read", "second-hand"]).toContain(point.basis);
  });

  // From memory in the reference values: shown as weak.
  test.each([
    ["branch", null, 30, 0.18],
    ["weather cap", 0.75, null, 0.18],
    ["orifice", null, null, 1.78],
    ["trap", null, null, 1.5],
    ["tapered hood round", null, 45, 0.06],
    ["elbow older manual", 1.5, null, 0.39],
    ["mitre", null, 90, 1.2],
  ] as const)("%s at %p, %p degrees is %p from memory, and says so", (key, shape, angle, coefficient) => {
    const point = printed(key, shape, angle);
    expect(point.coefficient).toBe(coefficient);
    expect(point.basis).toBe("from memory");
  });

  test("of the elbow's turn are 0.45 at 30, 0.6 at 45, 1.13 at 110 and 1.28 at 150 degrees (SMACNA 4th ed., Table A-7)", () => {
    const at = (angle: number) => elbowAngleMultiplier.find((row) => row.angle === angle)?.value;
    expect([at(30), at(45), at(90), at(110), at(150)]).toEqual([0.45, 0.6, 1, 1.13, 1.28]);
  });

  test("of the mitre in slow air fall from 1.4 at Re 10 000 to 1 at 140 000 (SMACNA 4th ed., Table A-7)", () => {
    const values = mitreReynoldsMultiplier.map((row) => row.value);
    expect(values).toEqual([1.4, 1.26, 1.14, 1.09, 1.04, 1]);
  });
});

describe("what must hold between the tables", () => {
  test("an abrupt expansion loses (1 - ratio)^2 to the printed digits (Borda-Carnot)", () => {
    for (const { shape, coefficient } of rowOf(lossFamilies, "expansion abrupt").points) {
      expect(Math.abs(coefficient - (1 - shape!) ** 2)).toBeLessThanOrEqual(0.005);
    }
  });

  test.each([
    "elbow smooth",
    "elbow 4-piece",
    "elbow 5-piece",
    "elbow 3-piece",
    "elbow 7-gore",
    "gate part open",
    "gate part open without recess",
  ])("%s loses less the wider or the more open it is", (key) => {
    const points = [...rowOf(lossFamilies, key).points].sort((a, b) => a.shape! - b.shape!);
    points.slice(1).forEach((point, place) => expect(point.coefficient).toBeLessThan(points[place]!.coefficient));
  });

  test("more pieces lose less: 5 under 4 under 3, smooth least, at every r/D that two of them print", () => {
    const order = ["elbow smooth", "elbow 5-piece", "elbow 4-piece", "elbow 3-piece"].map((key) =>
      rowOf(lossFamilies, key),
    );
    order.slice(1).forEach((rougher, place) => {
      for (const point of rougher.points) {
        const smoother = order[place]!.points.find(({ shape }) => shape === point.shape);
        if (smoother !== undefined) expect(smoother.coefficient).toBeLessThan(point.coefficient);
      }
    });
  });

  test("a cone of 0 degrees is the bare end and one of 180 the flange, whatever its length", () => {
    const at = (key: string, angle: number) =>
      rowOf(lossFamilies, key)
        .points.filter((point) => point.angle === angle)
        .map(({ coefficient }) => coefficient);
    expect(at("cone", 0)).toEqual(Array(6).fill(1));
    expect(at("cone", 180)).toEqual(Array(6).fill(0.5));
    expect(at("cone flanged", 0)).toEqual(Array(5).fill(0.5));
    expect(at("cone flanged", 180)).toEqual(Array(5).fill(0.5));
  });

  test("no contraction is no loss: ratio 1 costs nothing at any angle", () => {
    const points = rowOf(lossFamilies, "contraction").points.filter(({ shape }) => shape === 1);
    expect(points.map(({ coefficient }) => coefficient)).toEqual(Array(9).fill(0));
  });
});
