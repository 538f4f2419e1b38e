import { cellIndex } from "../../../src/share/fixed/cellIndex";
import { sampleBook, type SampleSheet } from "../sampleBooks";

const sheets: Record<string, SampleSheet> = {
  S: {
    rows: [[1, 2, 3]],
    formulas: {
      B3: {
        code: "=FILL(A1)",
        shows: [
          [1, 2],
          [3, 4],
          [5, 6],
        ],
      },
    },
  },
  "My sheet": { rows: [[1], [null], [3]] },
};
const index = cellIndex(sampleBook(sheets, [{ name: "units", sheet: "My sheet", at: "A3" }]));

test("a cell is found by its sheet in any letters, and by its address", () => {
  expect(index.cell("s", "B1")).toEqual({ at: "B1", value: 2 });
  expect(index.cell("MY SHEET", "A3")).toEqual({ at: "A3", value: 3 });
  expect([index.cell("S", "Z9"), index.cell("none", "A1")]).toEqual([undefined, undefined]);
});

test("what a formula fills is its own, what is typed, blank or beside it is nobody's", () => {
  const owners = ["B3", "C3", "B4", "C4", "B5", "C5"].map((at) => index.ownerOf("s", at)?.at);
  expect(owners).toEqual(["B3", "B3", "B3", "B3", "B3", "B3"]);
  expect(index.ownerOf("S", "C5")).toEqual({ at: "B3", formula: "=FILL(A1)" });
  const others = ["A1", "A3", "A4", "B2", "D3", "D4", "B6", "C6", "Z9"].map((at) => index.ownerOf("S", at));
  expect(others).toEqual(others.map(() => null));
  expect(index.ownerOf("none", "A1")).toBeNull();
});

test("a formula that stands where another fills owns its cell", () => {
  const shows = [[1], [2]];
  const both = cellIndex(
    sampleBook({ S: { formulas: { A1: { code: "=FILL()", shows }, A2: { code: "=1", shows: [[1]] } } } }),
  );
  expect(both.ownerOf("S", "A2")).toEqual({ at: "A2", formula: "=1" });
});

test("what computes a range is each formula that stands in it or fills into it, once, however many cells it fills", () => {
  const down = { code: "=DOWN()", shows: [[1], [2], [3]] };
  const across = { code: "=ACROSS()", shows: [[1, 2, 3]] };
  const one = (code: string) => ({ code, shows: [[1]] });
  const formulas = { C9: one("=9"), A2: down, C3: one("=3"), B6: across, C1: one("=1"), C5: one("=5") };
  const many = cellIndex(sampleBook({ S: { rows: [[1, 2]], formulas } }));
  const owners = (top: number, left: number, bottom: number, right: number) =>
    [...many.ownersIn(range("s", top, left, bottom, right))].map(({ at }) => at).sort();
  expect(owners(1, 1, 1, 2)).toEqual([]); // typed
  expect(owners(1, 1, 99, 99)).toEqual(["A2", "B6", "C1", "C3", "C5", "C9"]);
  expect(owners(3, 3, 8, 3)).toEqual(["B6", "C3", "C5"]); // C6 is filled from B6
  expect(owners(4, 1, 4, 1)).toEqual(["A2"]);
  expect(owners(5, 1, 5, 1)).toEqual([]);
  expect(owners(6, 4, 6, 4)).toEqual(["B6"]);
  expect(owners(7, 3, 8, 3)).toEqual([]);
  expect([...many.ownersIn(range("none", 1, 1, 1_048_576, 16_384))]).toEqual([]);
});

const range = (sheet: string, top: number, left: number, bottom: number, right: number) => ({
  ...{ sheet, top, left, bottom, right },
});

/** S is filled to row 5 and column C, My sheet to row 3 and column A; fifty blank rows and columns behind count. */
test.each([
  ["A1", "S", range("S", 1, 1, 1, 1)],
  ["$B$2:C4", "S", range("S", 2, 2, 4, 3)],
  ["'my SHEET'!A1:A2", "S", range("My sheet", 1, 1, 2, 1)],
  ["UNITS", "S", range("My sheet", 3, 1, 3, 1)],
  ["A1:A60", "S", range("S", 1, 1, 55, 1)],
  ["A1:BZ1", "S", range("S", 1, 1, 1, 53)], // 3 + 50
  ["A70:A80", "S", range("S", 70, 1, 70, 1)], // beyond what counts its first cell is left
  ["B:C", "S", range("S", 1, 2, 55, 3)],
  ["2:3", "S", range("S", 2, 1, 3, 53)],
  ["'My sheet'!A:A", "S", range("My sheet", 1, 1, 53, 1)], // 3 + 50
  ["'My sheet'!2:9", "S", range("My sheet", 2, 1, 9, 51)], // 1 + 50
])("%s on %s", (text, sheet, found) => expect(index.resolve(text, sheet)).toEqual(found));

test.each([["none!A1"], ["none!A:A"], ["nothing"], ["#REF!"], ["[Book.xlsx]S!A:A"], ["Table[x]"]])(
  "%s is nowhere in the book",
  (text) => expect(index.resolve(text, "S")).toBeNull(),
);

test("an empty sheet counts as one cell with fifty behind it", () => {
  const empty = cellIndex(sampleBook({ E: {} }));
  expect(empty.resolve("A:A", "E")).toEqual(range("E", 1, 1, 51, 1));
  expect(empty.resolve("1:1", "E")).toEqual(range("E", 1, 1, 1, 51));
});
