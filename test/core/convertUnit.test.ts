import fc from "fast-check";
import { convertUnit } from "../../src/core/convertUnit";
import { DomainError } from "../../src/core/errors";
import { plain } from "../../src/core/naming/findNamed";
import { convertibleUnits } from "../../src/reference/quantities";
import { expectRefusal } from "../support/coreRefusal";
import { halfLastDigit, relative } from "../support/printed";

const kinds = Object.entries(convertibleUnits);
const names = (kind: string): string[] => convertibleUnits[kind]!.flatMap((unit) => unit.names);

describe("convertUnit", () => {
  // Rows read elsewhere stand in test/published/data/units.ts. These are from memory; all follow from exact definitions.
  test.each([
    [1, "cfm", "L/s", "0.4719474432"],
    [1, "cfm", "m³/h", "1.69901079552"],
    [1, "m³/h", "cfm", "0.588577779"],
    [1, "fpm", "m/s", "0.00508"],
    [1, "in.w.g.", "Pa", "248.84"],
    [1, "in.w.g. 4 °C", "Pa", "249.08891"],
    [1, "in.w.g. 68 °F", "Pa", "248.64"],
    [1, "mm w.g.", "Pa", "9.80665"],
    [1, "lb/ft³", "kg/m³", "16.01846337"],
    [0.075, "lb/ft³", "kg/m³", "1.20138"],
    [1, "in.w.g.", "lbf/ft²", "5.197"],
    [1, "hp", "W", "745.699872"],
    [1, "hp metric", "W", "735.49875"], // 75 kgf m/s x 9.80665
    [1, "mph", "m/s", "0.44704"], // 1609.344 m / 3600 s
    [1, "yd", "m", "0.9144"],
    [1, "bar", "kPa", "100"],
    [144, "in²", "ft²", "1"],
  ])("turns %d %s into %s: %s", (value, from, to, printed) => {
    const result = convertUnit(value, from, to);
    expect(Math.abs(result - Number(printed))).toBeLessThanOrEqual(halfLastDigit(printed));
  });

  test("knows a unit by any of its spellings, in any case", () => {
    expect(convertUnit(1, "InWG", " PA ")).toBe(convertUnit(1, "in.w.g.", "Pa"));
    expect(convertUnit(1, "FT3/MIN", "m3/h")).toBe(convertUnit(1, "cfm", "m³/h"));
  });

  test.each(kinds)("%s: every pair of units turns round, and three in a row agree with two", (kind) => {
    const unit = fc.constantFrom(...names(kind));
    fc.assert(
      fc.property(unit, unit, unit, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (a, b, c, value) => {
        const there = convertUnit(value, a, b);
        const allowed = 1e-12 * Math.abs(value);
        expect(Math.abs(convertUnit(there, b, a) - value)).toBeLessThanOrEqual(allowed);
        const straight = convertUnit(value, a, c);
        expect(Math.abs(convertUnit(there, b, c) - straight)).toBeLessThanOrEqual(1e-12 * Math.abs(straight));
      }),
    );
  });

  test("no spelling stands for two units", () => {
    const all = kinds.flatMap(([, units]) => units.flatMap((unit) => unit.names.map(plain)));
    expect(all.filter((name, index) => all.indexOf(name) !== index)).toEqual([]);
  });

  test("kinds do not mix", () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.constantFrom(...kinds), ([first, ones], [second, others]) => {
        fc.pre(first !== second);
        const [from, to] = [ones[0]!.names[0]!, others[0]!.names[0]!];
        expectRefusal(
          () => convertUnit(1, from, to),
          DomainError,
          `to must be a unit of ${first} like "${from}", not of ${second}; got "${to}"`,
        );
      }),
    );
  });

  test("an unknown unit is answered with the nearest ones", () => {
    // "pas" is one letter from "Pa", "psi" and "PS"
    expect(() => convertUnit(1, "pas", "kPa")).toThrow(DomainError);
    expect(() => convertUnit(1, "pas", "kPa")).toThrow(
      /^from must be a unit we know \(nearest: "[^"]+", "[^"]+", "[^"]+"\); got "pas"$/,
    );
    expect(() => convertUnit(1, "pas", "kPa")).toThrow(/"Pa"/);
    expect(() => convertUnit(1, "ft", "yards")).toThrow(
      /^to must be a unit we know \(nearest: .*"yd".*\); got "yards"$/,
    );
  });
});

test("a small reverse check: 2119 cfm is about 1 m3/s", () => {
  // 1 / 0.0004719474432 = 2118.88
  expect(relative(convertUnit(1, "m3/s", "cfm"), 2118.88)).toBeLessThan(1e-5);
});
