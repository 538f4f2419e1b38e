import { referenceTables } from "../../../src/reference";
import { glance } from "../../../src/taskpane/tables/glance";
import { bluePipe, inventedTable, redPipe } from "./inventedTable";

const table = inventedTable([redPipe, bluePipe]);
const real = (name: string, key: string) => {
  const found = referenceTables.find((one) => one.name === name)!;
  return glance(
    found,
    found.rows.find((row) => row[0] === key)!,
    "SI",
  ).map((line) => `${line.name}: ${line.text}`);
};

test("rounds, and leaves names and notes to the details", () => {
  expect(glance(table, redPipe, "SI")).toEqual([
    { name: "bore", text: "4.763 mm = 3 in" },
    { name: "low", text: "2 mm" },
  ]);
});

test("gives the values in the reader's units first", () => {
  expect(glance(table, redPipe, "IP")).toEqual([
    { name: "bore", text: "3 in = 4.763 mm" },
    { name: "low", text: "2 mm" },
  ]);
});

test("leaves out a range that is the value itself", () => {
  expect(glance(table, bluePipe, "SI")).toEqual([{ name: "bore", text: "1.5 mm" }]);
});

test("joins the two ends of a range where one of them differs from the value", () => {
  const wide = [...bluePipe.slice(0, 5), 1.5, 2, ...bluePipe.slice(7)];
  expect(glance(table, wide, "SI")).toEqual([
    { name: "bore", text: "1.5 mm" },
    { name: "range", text: "1.5 to 2 mm" },
  ]);
});

test("shows a range that stands for itself, and nothing for a row without values", () => {
  const blank = ["x", "X", null, null, null, null, null, null, "read", "", "Book", "p 3"];
  expect(glance(table, blank, "SI")).toEqual([]);
  const range = [...blank.slice(0, 5), 7, 7, ...blank.slice(7)];
  expect(glance(table, range, "SI")).toEqual([{ name: "range", text: "7 mm" }]);
});

// The printed figures: SMACNA Table A-7 (0.27 at r/D 1.5), and the transport velocities as the two books have them.
test.each([
  ["fittings", "elbow 4-piece 1.5", ["bend radius / diameter (r/D): 1.5", "K at 90 degrees: 0.27"]],
  // 1.5 velocity pressures of 240.28 Pa, that of standard air at 20 m/s
  ["hoods", "flanged end", ["loss coefficient K: 0.5", "static suction at 20 m/s: 360.4 Pa = 1.448 in.w.g."]],
  [
    "transport",
    "average industrial dust",
    ["keeps moving from: 17.78 m/s = 3500 fpm", "nothing gained above: 20.32 m/s = 4000 fpm"],
  ],
  ["units", "length in", ["one of it is: 0.0254 m"]], // the inch is 25.4 mm by definition
  ["filters", "cyclone pressure drop", ["quantity: pressure drop", "range: 248.8 to 1493 Pa = 1 to 6 in.w.g."]],
])("in the table %s, %s reads as words with units", (name, key, lines) => expect(real(name, key)).toEqual(lines));

test("no row of any table shows the name of a system of units or of its own layout", () => {
  for (const each of referenceTables)
    for (const row of each.rows)
      for (const { name, text } of glance(each, row, "SI"))
        expect(`${name}: ${text}`).not.toMatch(/\b(SI|I-P)\b|^axes|^counts as|^shape|undefined|NaN|^: /);
});
