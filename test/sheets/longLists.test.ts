import { fitsRule, isListsSheet, LISTS_SHEET, type Visibility } from "../../src/sheets/longLists";
import type { Workbook } from "../../src/sheets/workbook";
import { sheetOf } from "../support/sheetOf";

test.each([
  [["IP", "SI"], true],
  [["a".repeat(127), "b".repeat(127)], true], // 255 characters with the comma
  [["a".repeat(128), "b".repeat(127)], false],
  [["yes, all", "no"], false],
  [[" blank before"], false],
  [[""], false],
  [['2" hose'], false],
  [["two\nlines"], false],
  [["no", "=1+1"], false],
])("%j stands in the rule itself: %s", (choices, fits) => expect(fitsRule(choices)).toBe(fits));

const words = [
  { at: "A1", value: "beech" },
  { at: "A2", value: null },
];
const book = (formula: string, names: Workbook["names"] = []): Workbook => ({
  name: "Book",
  names,
  sheets: [sheetOf("Runs", [{ at: "A1", formula }])],
});

describe("a sheet of long lists", () => {
  test.each<[string, Visibility, boolean]>([
    [LISTS_SHEET, "very hidden", true],
    ["Duct lists 2", "hidden", true], // as LibreOffice writes it
    ["Duct lists", "visible", false],
    ["Lists", "very hidden", true], // as version 1.0.0 wrote it into Excel
    ["Lists 3", "very hidden", true],
    ["Lists", "hidden", false], // anybody may hide a sheet of that name
    ["Listsomething", "very hidden", false],
    ["My lists", "very hidden", false],
  ])("called %s and %s is known: %s", (name, visibility, known) => {
    expect(isListsSheet(sheetOf(name, words), visibility, book("=1"))).toBe(known);
  });

  test("with a number, a formula, or a name for it is somebody's own", () => {
    const known = (cells: Parameters<typeof sheetOf>[1], names: Workbook["names"] = []): boolean =>
      isListsSheet(sheetOf("Lists", cells), "very hidden", book("=1", names));
    expect(known(words)).toBe(true);
    expect(known([...words, { at: "B1", value: 4 }])).toBe(false);
    expect(known([...words, { at: "B1", formula: '="beech"' }])).toBe(false);
    expect(known(words, [{ name: "woods", sheet: "Lists", at: "A1" }])).toBe(false);
  });

  test.each(["=MATCH(B1,Lists!A:A,0)", "=lists!A1", "=COUNTA('Lists'!A1:A9)"])("that %s reads stays", (formula) => {
    expect(isListsSheet(sheetOf("Lists", words), "very hidden", book(formula))).toBe(false);
  });
});
