import { cellText, numberText, plainRange, quotedSheet, quotedText, rangeText } from "../../src/share/references";

test("a sheet and its cells as a formula of any sheet writes them", () => {
  expect(quotedSheet("Bob's 'shop'")).toBe("'Bob''s ''shop'''");
  expect(cellText("Runs", 2, 9)).toBe("'Runs'!$B$9");
});

const at = (top: number, left: number, bottom: number, right: number) => ({ sheet: "Runs", top, left, bottom, right });
test.each([
  [at(8, 2, 48, 19), "'Runs'!$B$8:$S$48", "Runs!B8:S48"],
  [at(8, 2, 8, 2), "'Runs'!$B$8", "Runs!B8"],
  [at(8, 2, 8, 3), "'Runs'!$B$8:$C$8", "Runs!B8:C8"],
  [at(8, 2, 9, 2), "'Runs'!$B$8:$B$9", "Runs!B8:B9"],
])("a range %#, for a formula and for a person", (range, formula, person) => {
  expect([rangeText(range), plainRange(range)]).toEqual([formula, person]);
});

test("a text and a number as a formula writes them", () => {
  expect(quotedText('an "elbow"')).toBe('"an "&CHAR(34)&"elbow"&CHAR(34)&""');
  expect([0, 1.5, -2, 1e-7, -1e21].map(numberText)).toEqual(["0", "1.5", "(-2)", "1E-7", "(-1E+21)"]);
});
