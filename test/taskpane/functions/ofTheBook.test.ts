import type { FunctionMetadata } from "../../../src/hosts/functionsFile";
import type { Calculated, ShownCell } from "../../../src/sheets/calculated";
import { unitsOfBook } from "../../../src/taskpane/check/namedCells";
import { ofTheBook, unitsMeant } from "../../../src/taskpane/functions/ofTheBook";

const metadata = (...names: readonly string[]): FunctionMetadata => ({
  ...{ id: "F", name: "F", description: "", result: {} },
  parameters: names.map((name) => ({ name, description: "", optional: true })),
});

const FRICTION = metadata("airflow", "density", "units");

/** A book whose cells of these names show this. */
const book = (cells: Readonly<Record<string, ShownCell["value"]>>): Calculated => ({
  workbook: {
    name: "",
    sheets: [],
    names: Object.keys(cells).map((name, at) => ({ name, sheet: "Start", at: `B${at + 1}` })),
  },
  shown: new Map([
    ["Start", new Map(Object.values(cells).map((value, at): [string, ShownCell] => [`B${at + 1}`, { value }]))],
  ]),
});

test.each([
  [{ units: "SI", density: 1.2 }, FRICTION, { units: "units", density: "density" }],
  [{ Units: "IP", Density: 0.075 }, FRICTION, { units: "units", density: "density" }],
  [{ units: "SI", density: 1.2 }, metadata("airflow", "units"), { units: "units" }],
  [{ units: "SI" }, FRICTION, { units: "units" }],
  [{ units: "SI", density: "thin" }, FRICTION, { units: "units" }],
  [{ units: "metric", density: 1.2 }, FRICTION, {}], // of a density nobody knows the unit then
  [{ density: 1.2 }, FRICTION, {}],
  [{}, FRICTION, {}],
  [{ units: "SI", density: 1.2 }, metadata("runs", "density"), {}],
] as const)("in a book with %j a form begins with what is the book's", (cells, asked, given) =>
  expect(ofTheBook(asked, book(cells))).toEqual(given),
);

test("without a book nothing is given", () => expect(ofTheBook(FRICTION, null)).toEqual({}));

test.each([
  ["SI", { units: "IP" }, "SI"],
  ["IP", { units: "SI" }, "IP"],
  ["units", { units: "SI" }, "SI"],
  ["units", { units: "IP" }, "IP"],
  ["", { units: "SI" }, "IP"], // left out, as the function takes it
  [undefined, { units: "SI" }, "IP"],
] as const)("units %j in a book with %j mean %s", (text, cells, meant) =>
  expect(unitsMeant(text, book(cells))).toBe(meant),
);

test("units that a book does not have mean what the function takes: I-P", () =>
  expect(unitsMeant("units", null)).toBe("IP"));

test.each([
  [{ units: "SI" }, "SI"],
  [{ units: 3 }, null],
  [{}, null],
] as const)("a book with %j is in %j", (cells, units) => expect(unitsOfBook(book(cells))).toBe(units));
