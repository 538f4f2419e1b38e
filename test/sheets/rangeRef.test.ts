import { cellText, plainRange, rangeText, readRange, readReference } from "../../src/sheets/rangeRef";

const at = (sheet: string, top: number, left: number, bottom: number, right: number) => ({
  sheet,
  top,
  left,
  bottom,
  right,
});

describe("a range of a sheet", () => {
  test.each([
    ["B8", at("Here", 8, 2, 8, 2)],
    ["$B$8:$S$48", at("Here", 8, 2, 48, 19)],
    ["Runs!B8:B48", at("Runs", 8, 2, 48, 2)],
    ["'My runs'!C3", at("My runs", 3, 3, 3, 3)],
    ["'Bob''s ''shop'''!C3", at("Bob's 'shop'", 3, 3, 3, 3)],
    ["'Wow!'!C3", at("Wow!", 3, 3, 3, 3)],
    ["Größe_2.b!C3", at("Größe_2.b", 3, 3, 3, 3)],
  ])("is read from %s", (text, range) => expect(readRange(text, "Here")).toEqual(range));

  test.each([
    "B:B",
    "8:8",
    "B8:B",
    "[Book.xlsx]Runs!B8",
    "'[Book.xlsx]Runs'!B8",
    "Runs:Fan!B8",
    "'Runs:Fan'!B8",
    "'Bob's'!B8",
    "Runs!B:B",
    "Runs!",
    "#REF!",
    "=B8",
    "units",
    "8",
    "",
  ])("is not read from %p", (text) => expect(readRange(text, "Here")).toBeNull());

  test("must name its sheet where a whole workbook means it", () => {
    expect(readReference(" =Runs!$B$4:$C$9 ")).toEqual(at("Runs", 4, 2, 9, 3));
    expect(["B4", "=B4", "=#REF!", "=Runs!A:A"].map(readReference)).toEqual([null, null, null, null]);
  });

  test.each([
    [at("Runs", 8, 2, 48, 19), "Runs!$B$8:$S$48", "Runs!B8:S48"],
    [at("Runs", 8, 2, 8, 2), "Runs!$B$8", "Runs!B8"],
    [at("My runs", 8, 2, 8, 3), "'My runs'!$B$8:$C$8", "My runs!B8:C8"],
    [at("Bob's", 8, 2, 9, 2), "'Bob''s'!$B$8:$B$9", "Bob's!B8:B9"],
  ])("%j is written %s for a formula and %s for a person", (range, formula, person) => {
    expect([rangeText(range), plainRange(range)]).toEqual([formula, person]);
    expect(readRange(formula, "Here")).toEqual(range);
  });

  test("of one cell is written without its end", () => expect(cellText("Runs", 2, 9)).toBe("Runs!$B$9"));
});
