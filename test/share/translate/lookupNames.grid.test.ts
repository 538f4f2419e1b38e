/** A copy knows the names of its look-up tables: one that is gone leaves no answer, a row more is nothing to it. */
import { withNamesChecked, whileNamed } from "../../../src/share/translate/lookupNames";
import { copyTables } from "../../../src/share/translate/lookupTables";
import { newWorkings } from "../../../src/share/translate/workings";
import { placeOf } from "../../../src/sheets/address";
import type { Sheet } from "../../../src/sheets/workbook";
import { gridOfBook } from "../../support/gridOfBook";

const copied = copyTables("SI");
copied.tables.block("gates");
copied.tables.block("sizes SI"); // figures, not names
const workings = newWorkings();
const lookups = withNamesChecked(copied, workings);
const answers: Sheet = { ...lookups, name: "Answers", cells: [{ at: "A1", formula: `=${whileNamed("7", workings)}` }] };
const grid = gridOfBook({ name: "copy", sheets: [answers, lookups, workings.sheet], names: [] });
const seen = (): unknown[] => [grid.value("Answers", "A1"), String(grid.value("Lookups", "A2")).slice(0, 40)];
const [first, second] = [6, 7].map((row) => `A${row}`) as [string, string]; // below the title and the headings

test("with all names there is an answer, also of a table of figures that somebody changed", () => {
  expect(seen()).toEqual([7, "The formulas of the other sheets look he"]);
  const figure = lookups.cells.filter((cell) => "value" in cell && typeof cell.value === "number").at(-1)!.at;
  grid.type("Lookups", figure, "77");
  expect(seen()[0]).toBe(7);
  grid.undo();
});

test.each([
  ["another name of the table", () => grid.type("Lookups", first, String(grid.value("Lookups", second)))],
  ["a new name", () => grid.type("Lookups", first, "shutter")],
  ["nothing", () => grid.clear("Lookups", first)],
  ["a name without its row", () => grid.deleteCells("Lookups", first)],
  ["no row", () => grid.deleteRow("Lookups", 6)],
])("%s in place of a name leaves no answer, and the name is told", (_, edit) => {
  const name = String(grid.value("Lookups", first));
  edit();
  expect(grid.value("Answers", "A1")).toBe("#N/A");
  expect(String(grid.value("Lookups", "A2"))).toMatch(`Look: the name ${name} is gone from the tables below`);
  grid.undo();
  expect(seen()[0]).toBe(7);
});

test("two names that changed places have each other's figures: no answer, and it is told", () => {
  const [one, other] = [first, second].map((at) => String(grid.value("Lookups", at))) as [string, string];
  expect(one).not.toBe(other);
  grid.typeColumn("Lookups", first, [other, one]);
  expect(grid.value("Answers", "A1")).toBe("#N/A");
  expect(String(grid.value("Lookups", "A2"))).toMatch(
    `Look: the name ${one} is gone from the tables below or out of its place`,
  );
  grid.undo();
  expect(seen()[0]).toBe(7);
});

test("a row that is inserted and filled leaves all as it is", () => {
  grid.insertRow("Lookups", 7);
  grid.type("Lookups", "A7", "shutter");
  expect(seen()[0]).toBe(7);
});

test("of a long table each name is held, the last ones too", () => {
  const long = copyTables("SI");
  long.tables.block("fittings SI");
  const held = newWorkings();
  const tables = withNamesChecked(long, held);
  const names = tables.cells.filter((cell) => cell.at.startsWith("A") && "value" in cell);
  const { at: last, value: name } = names.at(-1) as { at: string; value: string };
  expect(names.length).toBeGreaterThan(300);
  expect(Math.max(...held.sheet.cells.map(({ at }) => placeOf(at).row))).toBeLessThan(110);
  const shown = gridOfBook({ name: "copy", sheets: [tables, held.sheet], names: [] });
  expect(shown.value("Workings", "F1")).toBe("");
  shown.type("Lookups", last, "another");
  expect(shown.value("Workings", "F1")).toBe(name);
  shown.undo();
  // any two neighbours, where one column of those that are held ends, too
  let tried = 0;
  for (const [index, { at }] of names.entries()) {
    const below = names[index + 1];
    if (below === undefined || placeOf(below.at).row !== placeOf(at).row + 1 || index % 33 !== 0) continue;
    const pair = [at, below.at].map((one) => String(shown.value("Lookups", one)));
    if (pair[0] === pair[1]) continue;
    shown.typeColumn("Lookups", at, [...pair].reverse());
    expect([at, shown.value("Workings", "F1")]).toEqual([at, pair[0]]);
    tried++;
    shown.undo();
  }
  expect(tried).toBeGreaterThan(5);
  // and a row between any two is nothing to it
  shown.insertRow("Lookups", placeOf(names[names.length >> 1]!.at).row);
  expect(shown.value("Workings", "F1")).toBe("");
});
