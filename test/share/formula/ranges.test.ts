import {
  cellOf,
  columnsOf,
  isOneCell,
  onAnySheet,
  readRange,
  rowsOf,
  sheetPrefix,
} from "../../../src/share/formula/ranges";

const at = (sheet: string, top: number, left: number, bottom: number, right: number) => ({
  sheet,
  top,
  left,
  bottom,
  right,
});

describe("readRange", () => {
  test.each([
    ["B8", at("Here", 8, 2, 8, 2)],
    ["$B$8:$S$48", at("Here", 8, 2, 48, 19)],
    ["S48:B8", at("Here", 8, 2, 48, 19)], // any two corners
    ["Runs!B8:B48", at("Runs", 8, 2, 48, 2)],
    ["'My runs'!C3", at("My runs", 3, 3, 3, 3)],
  ])("reads %s", (text, range) => expect(readRange(text, "Here")).toEqual(range));

  test.each(["B:B", "8:8", "B8:B", "[Book.xlsx]Runs!B8", "units", "8", ""])("reads no cells in %p", (text) =>
    expect(readRange(text, "Here")).toBeNull(),
  );
});

test("a range knows its size", () => {
  const range = at("Here", 3, 2, 5, 6); // rows 3, 4, 5; columns B to F
  expect([rowsOf(range), columnsOf(range), isOneCell(range)]).toEqual([3, 5, false]);
  expect(isOneCell(at("Here", 3, 2, 3, 2))).toBe(true);
  expect(isOneCell(at("Here", 3, 2, 3, 4))).toBe(false);
  expect(isOneCell(at("Here", 3, 2, 4, 2))).toBe(false);
});

test("a cell of a range, counted from its corner; of one row or column that one", () => {
  expect(cellOf(at("Here", 3, 2, 5, 6), 2, 4, "Here")).toBe("F5");
  expect(cellOf(at("Here", 3, 2, 5, 2), 2, 4, "Here")).toBe("B5");
  expect(cellOf(at("Here", 3, 2, 3, 6), 2, 4, "Here")).toBe("F3");
  expect(cellOf(at("Runs", 3, 2, 3, 2), 0, 0, "There here")).toBe("'Runs'!B3");
});

test.each([
  ["Budget", "Budget!"],
  ["Runs", "'Runs'!"], // short words may be read as a column
  ["My Budget", "'My Budget'!"],
  ["budget", "'budget'!"],
  ["Budget2", "'Budget2'!"],
  ["Bill's", "'Bill''s'!"],
])("the sheet %s stands before an address as %s", (sheet, prefix) => expect(sheetPrefix(sheet)).toBe(prefix));

test("a formula for another sheet names the sheet of each bare address, and only of those", () => {
  expect(onAnySheet('=A1+SUM($B$2:C3)+Runs!D4+units&"E5"', "Budget")).toBe(
    '=Budget!A1+SUM(Budget!$B$2:C3)+Runs!D4+units&"E5"',
  );
  expect(onAnySheet("=SUM(B:B)+SUM(B2:B)", "Budget")).toBe("=SUM(Budget!B:B)+SUM(Budget!B2:B)");
});
