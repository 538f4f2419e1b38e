/** Where a copy writes its word at the head of a sheet. */
import { headCellFor, takenIn } from "../../../src/share/fixed/checkCells";
import type { Sheet } from "../../../src/sheets/workbook";

const sheet = (texts: Readonly<Record<string, string>>): Sheet => ({
  name: "Page",
  columns: Array.from({ length: 12 }, () => 10),
  frozen: { rows: 0, columns: 0 },
  cells: Object.entries(texts).map(([at, value]) => ({ at, value })),
  lists: [],
  flags: [],
  tallRows: [],
});

const headOf = (texts: Readonly<Record<string, string>>): string | null =>
  headCellFor(sheet(texts), takenIn(sheet(texts)), []);

const SHUT = { A2: "a", A3: "a", A4: "a", A5: "a", A6: "a" }; // nothing is free under the title

test("it stands under the title; else beside it, past a text that runs over its own cell", () => {
  expect(headOf({ A1: "Title" })).toBe("A2");
  expect(headOf({ A1: "Title", ...SHUT })).toBe("C1");
  expect(headOf({ A1: "Title", C1: "short", ...SHUT })).toBe("D1");
  // 35 characters from C1 on are over in the fourth cell of 10
  expect(headOf({ A1: "Title", C1: "x".repeat(35), ...SHUT })).toBe("G1");
  expect(headOf({ A1: "x".repeat(35), ...SHUT })).toBe("E1");
});

test("where no place leaves the text whole, it stands where it has room itself", () => {
  expect(headOf({ A1: "x".repeat(200), ...SHUT })).toBe("C1");
});
