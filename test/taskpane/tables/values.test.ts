import { brief, display, glance, valuesOf } from "../../../src/taskpane/tables/values";
import { provenanceOf } from "../../../src/taskpane/tables/provenance";
import { bluePipe, inventedTable, redPipe } from "./inventedTable";

const table = inventedTable([redPipe, bluePipe]);

test("display keeps every digit and shows a missing cell as nothing", () => {
  expect([4.76251, "p 1", null].map(display)).toEqual(["4.76251", "p 1", ""]);
});

test.each([
  [4.76251, 4.763],
  [0.0393701, 0.03937],
  [123456, 123456],
  [1766.97, 1767],
  [0, 0],
])("brief rounds %d to %d", (number, rounded) => expect(brief(number)).toBe(rounded));

test("valuesOf joins the two units of one quantity and leaves out label, blanks and provenance", () => {
  expect(valuesOf(table, redPipe)).toEqual([
    { name: "key", parts: [{ cell: "red", unit: "" }] },
    { name: "also", parts: [{ cell: "rouge", unit: "" }] },
    {
      name: "bore",
      parts: [
        { cell: 4.76251, unit: "mm" },
        { cell: 3, unit: "in" },
      ],
    },
    { name: "low", parts: [{ cell: 2, unit: "mm" }] },
    { name: "note", parts: [{ cell: "Invented.", unit: "" }] },
  ]);
});

describe("glance", () => {
  test("rounds, and leaves names and notes to the details", () => {
    expect(glance(table, redPipe)).toEqual([
      { name: "bore", text: "4.763 mm = 3 in" },
      { name: "low", text: "2 mm" },
    ]);
  });

  test("leaves out a range that is the value itself", () => {
    expect(glance(table, bluePipe)).toEqual([{ name: "bore", text: "1.5 mm" }]);
  });

  test("shows both ends where one of them differs from the value", () => {
    const wide = [...bluePipe.slice(0, 5), 1.5, 2, ...bluePipe.slice(7)];
    expect(glance(table, wide).map(({ text }) => text)).toEqual(["1.5 mm", "1.5 mm", "2 mm"]);
  });

  test("shows a range that stands for itself, and nothing for a row without values", () => {
    const blank = ["x", "X", null, null, null, null, null, null, "read", "", "Book", "p 3"];
    expect(glance(table, blank)).toEqual([]);
    const range = [...blank.slice(0, 5), 7, 7, ...blank.slice(7)];
    expect(glance(table, range)).toEqual([{ name: "low", text: "7 mm" }]);
  });
});

test("provenanceOf reads the last four columns and names the weakness of a weak row only", () => {
  expect(provenanceOf(redPipe)).toEqual({ basis: "read", weakness: "", source: "Book", where: "p 1" });
  expect(provenanceOf(bluePipe)).toEqual({
    basis: "from memory",
    weakness: "from memory",
    source: "Red book",
    where: "p 2",
  });
});
