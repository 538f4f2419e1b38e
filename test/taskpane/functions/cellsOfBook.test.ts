import { cellsOfBook } from "../../../src/taskpane/functions/cellsOfBook";
import { seenIn } from "../../../src/taskpane/check/seenIn";
import { suggestedRange } from "../../../src/taskpane/functions/suggestedRange";
import { bookOf, soundRuns } from "../../support/books";

const book = bookOf(
  {
    Runs: { rows: soundRuns, at: { column: 2, row: 8 } },
    "My fan": {
      rows: [
        ["Airflow (cfm)", "Fan static pressure (in.w.g.)"],
        [0, 8],
        [2000, 0],
        [null, null],
        ["works", "here"],
      ],
    },
    Faults: { rows: [[{ error: "#NAME?" }, 3]] },
  },
  [{ name: "density", sheet: "Faults", at: "B1" }],
);

test.each([
  ["Runs!B9:C9", [["saw", "main"]]],
  ["runs!$b$9", [["saw"]]],
  [
    "'My fan'!A2:B3",
    [
      [0, 8],
      [2000, 0],
    ],
  ],
  ["Density", [[3]]],
  ["Faults!A1:C1", [["#NAME?", 3, null]]],
  ["B9", null], // nobody knows which sheet
  ["Elsewhere!A1", null],
  ["Runs!C9:B9", [["saw", "main"]]], // any two corners, as in a sheet
  ["Runs!A1:ZZ9999", null],
])("%s holds %j", (reference, cells) => expect(cellsOfBook(book, reference)).toEqual(cells));

test("in a book of one sheet the sheet need not be named", () => {
  expect(cellsOfBook(bookOf({ Only: { rows: [[7]] } }), "A1")).toEqual([[7]]);
});

test("the form offers the runs and the curve of the open book, wherever they stand", () => {
  expect(suggestedRange("runs", seenIn(book))).toBe("Runs!B8:J11");
  expect(suggestedRange("curve", seenIn(book))).toBe("'My fan'!A1:B3");
  expect(suggestedRange("airflow", seenIn(book))).toBeNull();
  expect(suggestedRange("runs", null)).toBeNull();
  const named = bookOf({ Q1: { rows: soundRuns, at: { column: 2, row: 8 } } });
  expect(suggestedRange("runs", seenIn(named))).toBe("'Q1'!B8:J11"); // Q1!B8:J11 would begin at the cell Q1
});
