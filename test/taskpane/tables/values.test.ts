import { provenanceOf } from "../../../src/taskpane/tables/provenance";
import { brief, display, valuesOf } from "../../../src/taskpane/tables/values";
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
  const part = (cell: string | number, unit: string, header: string) => ({ cell, unit, header });
  expect(valuesOf(table, redPipe)).toEqual([
    { name: "key", parts: [part("red", "", "key")] },
    { name: "also", parts: [part("rouge", "", "also")] },
    { name: "bore", parts: [part(4.76251, "mm", "bore (mm)"), part(3, "in", "bore (in)")] },
    { name: "low", parts: [part(2, "mm", "low (mm)")] },
    { name: "note", parts: [part("Invented.", "", "note")] },
  ]);
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
