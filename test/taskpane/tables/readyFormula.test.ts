import { lookUp } from "../../../src/functions/tables/lookUp";
import "../../support/customFunctions";
import { losscoefficient } from "../../../src/functions/losses/losscoefficient";
import { referenceTables } from "../../../src/reference";
import { familyOf, readyFormula, sourcedFormula } from "../../../src/taskpane/tables/readyFormula";
import { sketchOf } from "../../../src/taskpane/tables/sketches/sketchOf";
import { lossFamilies } from "../../../src/reference/lossFamilies";

const table = (name: string) => referenceTables.find((one) => one.name === name)!;
const row = (name: string, key: string) => table(name).rows.find((one) => one[0] === key)!;

test.each([
  ["fittings", "elbow 4-piece 1.5", '=DUCT.LOSSCOEFFICIENT("elbow 4-piece",1.5)'],
  ["hoods", "flanged end", '=DUCT.LOSSCOEFFICIENT("flanged end")'],
  ["fittings", "elbow stamped 100 mm 45", '=DUCT.LOSSCOEFFICIENT("elbow stamped 100 mm 45")'],
  ["fittings", "branch 30", '=DUCT.LOSSCOEFFICIENT("branch",,30)'],
  ["materials", "pvc pipe", '=INDEX(DUCT.REFERENCE("materials","pvc pipe","roughness (mm)"),1,1)'],
])("the formula of %s, %s is %s", (name, key, formula) =>
  expect(readyFormula(table(name), row(name, key))).toBe(formula),
);

test("a row of words alone has no formula", () => {
  expect(readyFormula(table("hazards"), table("hazards").rows[0]!)).toBeNull();
  expect(sourcedFormula(table("hazards"), table("hazards").rows[0]!)).toBeNull();
});

test.each([
  ["fittings", "branch 30", '=DUCT.REFERENCE("fittings","branch 30","coefficient")'],
  ["fittings", "elbow angle multiplier 45", '=DUCT.REFERENCE("fittings","elbow angle multiplier 45","coefficient")'],
  ["materials", "pvc pipe", '=DUCT.REFERENCE("materials","pvc pipe","roughness (mm)")'],
])("the formula of %s, %s with its source is %s", (name, key, formula) =>
  expect(sourcedFormula(table(name), row(name, key))).toBe(formula),
);

test("with its source every formula gives the number of its own row, its source, and how it is known", () => {
  let weak = 0;
  for (const each of referenceTables)
    for (const one of each.rows) {
      const formula = sourcedFormula(each, one);
      if (formula === null) continue;
      const [name, key, column] = argumentsOf(/^=DUCT\.REFERENCE\((.*)\)$/.exec(formula)![1]!);
      const [value, told] = lookUp([[name]], [[key]], [[column]])[0]!;
      expect(one).toContain(value);
      const [basis, mark, source] = one.slice(-4).map(String);
      expect(String(told)).toContain(source);
      expect(String(told).toLowerCase()).toContain(basis);
      if (mark !== "") weak++;
    }
  expect(weak).toBeGreaterThan(100);
});

/** The arguments of a call as our formulas have them: texts without commas in them are quoted, numbers are not. */
function argumentsOf(list: string): (string | number | undefined)[] {
  const parts = list.match(/"(?:[^"]|"")*"|[^,]+|(?<=,)(?=,)/g) ?? [];
  return parts.map((part) =>
    part === "" ? undefined : part.startsWith('"') ? part.slice(1, -1).replaceAll('""', '"') : Number(part),
  );
}

/** Calls the function that a row's formula calls. */
function computed(formula: string): unknown {
  const cell = (value: string | number | undefined) => (value === undefined ? undefined : [[value]]);
  const loss = /^=DUCT\.LOSSCOEFFICIENT\((.*)\)$/.exec(formula);
  if (loss !== null) {
    const [name, shape, angle] = argumentsOf(loss[1]!).map(cell);
    return losscoefficient(name!, shape, angle)[0]![0];
  }
  const [table, key, column] = argumentsOf(/^=INDEX\(DUCT\.REFERENCE\((.*)\),1,1\)$/.exec(formula)![1]!).map(cell);
  return lookUp(table, key, column)[0]![0];
}

test("every formula gives the number of its own row", () => {
  let tried = 0;
  for (const each of referenceTables)
    for (const one of each.rows) {
      const formula = readyFormula(each, one);
      if (formula === null) continue;
      tried++;
      const numbers = one.filter((cell) => typeof cell === "number");
      expect({ formula, in: numbers.some((number) => Math.abs(number - Number(computed(formula))) < 1e-9) }).toEqual({
        formula,
        in: true,
      });
    }
  expect(tried).toBeGreaterThan(400);
});

test("every fitting and hood has a sketch, and a row knows its family", () => {
  for (const family of lossFamilies)
    expect({ key: family.key, drawn: sketchOf(family.key) !== null }).toEqual({ key: family.key, drawn: true });
  expect(familyOf(table("fittings").rows.find((one) => one[1] === "Round elbow, smooth, another manual")!)?.key).toBe(
    "elbow smooth manual",
  );
  expect(familyOf(row("fittings", "elbow angle multiplier 45"))).toBeUndefined();
});
