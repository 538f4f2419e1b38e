import "../../support/customFunctions";
import { about, cautions, convertunit, reference } from "../../../src/functions/tables";
import { version } from "../../../package.json";
import { referenceTables } from "../../../src/reference";
import { refusal } from "../../support/refusal";

const call = (fn: (...args: any[]) => any[][], ...args: unknown[]): any[][] => fn(...args);

describe("REFERENCE", () => {
  test.each(referenceTables.map((table) => table.name))(
    "%s comes whole, rectangular, with headers and without blanks that are no text",
    (name) => {
      const answer = reference([[name]]);
      expect(new Set(answer.map((row) => row.length)).size).toBe(1);
      expect(answer.length).toBeGreaterThan(1);
      expect(answer.flat().every((cell) => typeof cell === "string" || Number.isFinite(cell))).toBe(true);
      expect(answer[0]!.slice(-4)).toEqual(["basis", "weak", "source", "where"]);
    },
  );

  // ASHRAE table of duct roughness factors (second-hand): commercial steel 0.00015 ft = 0.04572 mm
  test("a key and a column give the value beside its source", () => {
    const [[value, source]] = call(reference, [["materials"]], [["steel"]], [["roughness (mm)"]]) as [[number, string]];
    expect(Math.abs(value - 0.04572)).toBeLessThanOrEqual(0.000005);
    expect(source).toMatch(/ASHRAE/);
  });

  test("a key may be another spelling, and a family's name gives all its rows", () => {
    expect(call(reference, [["materials"]], [["galvanized steel"]])[1]![0]).toBe("galvanised steel");
    const elbows = call(reference, [["fittings"]], [["elbow smooth"]]);
    expect(elbows.slice(1).every(([key]) => /^elbow smooth [\d.]+$/.test(String(key)))).toBe(true);
    expect(elbows.length).toBeGreaterThan(4);
  });

  test.each([
    [["fitings"], [], [], /^table must be the name of a table \(nearest: "fittings", .*\); got "fitings"$/],
    [[], [], [], /^table must be a name: materials, fittings, .*; got a blank cell$/],
    [["materials"], ["cheese"], [], /^key must be a key of the table "materials" \(nearest: .*\); got "cheese"$/],
    [
      ["materials"],
      ["steel"],
      ["colour"],
      /^column must be a column of the table "materials" \(nearest: .*\); got "colour"$/,
    ],
    [["materials"], [], ["low (mm)"], /^key must be given beside a column; got a blank cell$/],
  ])("refusal %#", (table, key, column, message) => {
    const { code, message: said } = refusal(() => call(reference, [[table[0]]], [[key[0]]], [[column[0]]]));
    expect(code).toBe("#VALUE!");
    expect(said).toMatch(message);
  });
});

describe("CONVERTUNIT", () => {
  // NIST SP 811, exact by definition: 1 cfm = 1.69901079552 m3/h; 1 fpm = 0.00508 m/s
  test.each([
    [1, "cfm", "m³/h", 1.69901079552],
    [1, "fpm", "m/s", 0.00508],
    [1, "in.w.g.", "Pa", 248.84],
    [1, "hp", "W", 745.699872],
    [12, "IN", " ft ", 1],
    [1, "lb/ft3", "kg/m3", 16.01846337396014],
  ])("%p %s in %s is %p", (value, from, to, expected) => {
    expect(Number(convertunit([[value]], [[from]], [[to]])[0]![0]) / expected).toBeCloseTo(1, 12);
  });

  test("a column with one pair of units gives a column", () => {
    expect(convertunit([[1], [null], ["x"]], [["kPa"]], [["Pa"]])).toEqual([
      [1000],
      [""],
      ['value must be a number; got "x"'],
    ]);
  });

  test("kinds do not mix, and unknown units are answered with the nearest", () => {
    expect(refusal(() => convertunit([[1]], [["cfm"]], [["fpm"]])).message).toBe(
      'to must be a unit of airflow like "cfm", not of velocity; got "fpm"',
    );
    expect(refusal(() => convertunit([[1]], [["cfn"]], [["fpm"]])).message).toMatch(
      /^from must be a unit we know \(nearest: .*"cfm"/,
    );
    expect(refusal(() => convertunit([[1]], [[5]], [["fpm"]])).message).toBe("from must be a name; got 5");
  });
});

describe("CAUTIONS and ABOUT", () => {
  test("each caution has its source", () => {
    const [header, ...rows] = call(cautions);
    expect(header).toEqual(["Topic", "Caution", "Basis", "Source", "Where"]);
    expect(rows.length).toBeGreaterThan(8);
    for (const row of rows) for (const cell of row) expect(String(cell).length).toBeGreaterThan(1);
  });

  test("a topic gives its own rows, whatever the case", () => {
    const rows = call(cautions, [[" Health "]]).slice(1);
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows.map(([topic]) => topic))).toEqual(new Set(["health"]));
  });

  test("another topic is answered with the nearest", () => {
    expect(refusal(() => call(cautions, [["helth"]])).message).toMatch(
      /^topic must be a topic of the cautions \(nearest: "health", /,
    );
  });

  test("ABOUT names the version of the package", () => {
    expect(about()[0]).toEqual(["Duct Ledger", "version", version]);
  });
});
