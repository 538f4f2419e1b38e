import { contentOf, textContent } from "../../../src/hosts/local/content";
import { gridData } from "../../../src/hosts/local/model";
import { demoBook } from "../../../src/sheets/demo";
import type { Workbook } from "../../../src/sheets/workbook";

const demo = demoBook();

const small: Workbook = {
  name: "Small",
  names: [{ name: "units", sheet: "It's one", at: "B2" }],
  sheets: [
    {
      name: "It's one",
      columns: [10, 20.5],
      tallRows: [{ row: 3, lines: 2 }],
      frozen: { rows: 1, columns: 2 },
      cells: [
        { at: "A1", value: "Title", style: "title" },
        { at: "B2", value: 0.5, style: "input", format: "0.00", note: "why" },
        { at: "B3", value: null, style: "input", format: "0.00" },
        { at: "DA4", formula: "=B2*2" },
        { at: "A5", value: "=1+1" },
      ],
      lists: [{ range: "B2", choices: ["a", "b"], strict: true }],
      flags: [{ range: "A1:A9", containsText: "settles", style: "flag" }],
    },
  ],
};

interface GridSheet {
  cells: Record<string, string>;
  styles: Record<string, number>;
  formats: Record<string, number>;
  borders: Record<string, number>;
  [more: string]: unknown;
}

const data = gridData(small) as unknown as {
  sheets: GridSheet[];
  styles: Record<number, object>;
  formats: Record<number, string>;
  [more: string]: unknown;
};
const sheet = data.sheets[0]!;

describe("a workbook as the grid's data", () => {
  test("fills the cells, leaves blank ones out, and marks text that begins like a formula", () => {
    expect(sheet.cells).toEqual({ A1: "Title", B2: "0.5", DA4: "=B2*2", A5: "'=1+1" });
  });

  test("numbers styles and formats once, and gives blank cells theirs too", () => {
    expect(sheet.styles.B2).toBe(sheet.styles.B3);
    expect(sheet.styles.B2).not.toBe(sheet.styles.A1);
    expect(data.styles[sheet.styles.A1!]).toMatchObject({ bold: true, fontSize: 15 });
    expect(data.formats[sheet.formats.B2!]).toBe("0.00");
    expect(sheet.formats.B3).toBe(sheet.formats.B2);
    expect(Object.keys(sheet.borders)).toEqual(["B2", "B3"]);
  });

  test("is large enough for every cell, with rows to spare, and freezes and widens as told", () => {
    expect(sheet.colNumber).toBe(105); // DA
    expect(sheet.rowNumber).toBeGreaterThan(5);
    expect(sheet.panes).toEqual({ xSplit: 2, ySplit: 1 });
    expect(sheet.cols).toEqual({ 0: { size: 70 }, 1: { size: 144 } });
    expect((sheet.rows as Record<string, { size: number }>)[2]!.size).toBeGreaterThan(23);
  });

  test("carries names, notes, lists and flags, with the sheet's name quoted", () => {
    expect(data.namedRanges).toEqual({ units: "'It’s one'!B2" }); // the grid refuses a straight apostrophe
    expect(data.kept).toMatchObject({ facts: [{ range: "'It’s one'!B2", kind: "note", text: "why" }] });
    expect(sheet.dataValidationRules).toMatchObject([
      { ranges: ["B2"], isBlocking: true, criterion: { type: "isValueInList", values: ["a", "b"] } },
    ]);
    expect(sheet.conditionalFormats).toMatchObject([
      { ranges: ["A1:A9"], rule: { operator: "containsText", values: ["settles"] } },
    ]);
  });

  test.each([
    ["Title", "Title"],
    ["ümlaut", "ümlaut"],
    ["=1+1", "'=1+1"],
    ["-4", "'-4"],
    ["@x", "'@x"],
    ["12", "'12"],
    ["1/2", "'1/2"],
    ["'x", "''x"],
    ["true", "'true"],
    ["#N/A", "'#N/A"],
    ["", "'"],
  ])("text %p is typed as %p", (value, typed) => {
    expect(textContent(value)).toBe(typed);
  });

  test("truth values and blanks are typed as such", () => {
    expect(contentOf({ at: "A1", value: true })).toBe("TRUE");
    expect(contentOf({ at: "A1", value: null })).toBe("");
  });

  test("keeps every formula of the demo as it is written", () => {
    const written = (gridData(demo) as unknown as { sheets: GridSheet[] }).sheets;
    demo.sheets.forEach((described, index) => {
      for (const cell of described.cells)
        if ("formula" in cell) expect(written[index]!.cells[cell.at]).toBe(cell.formula);
    });
  });
});
