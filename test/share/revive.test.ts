import { clubCopy } from "../../src/share/clubCopy";
import { revive } from "../../src/share/revive/revive";
import type { Calculated } from "../../src/sheets/calculated";
import type { Sheet, SheetCell, Workbook } from "../../src/sheets/workbook";
import { type SampleSheet, sampleBook } from "./sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

const ducts: SampleSheet = {
  rows: [[4, "IP"]],
  formulas: {
    A4: { code: "=DUCT.AREA(A1,,units)", shows: [[0.0872664626]] },
    A6: {
      code: "=DUCT.SOLVE($A$1:B$2,Other!A1:A3)",
      shows: [
        ["Run", "Airflow (cfm)"],
        ["saw", 400],
      ],
    },
    A9: { code: '=IF(A1=4,DUCT.AREA(A1)&"x",Other!A1)', shows: [["0.0872x"]] },
    A11: { code: '=DUCT.AREA(IF(Other!$A$4="as calibrated",Other!A1,A1))', shows: [[0.0872664626]] },
    A12: { code: '=IF(Other!$A$4="as calibrated","by readings, "&A1,"as typed")&"."', shows: [["as typed."]] },
  },
  with: { lists: [{ range: "B1", choices: ["IP", "SI"], strict: true }] },
};
const NAMES = [{ name: "units", sheet: "Ducts", at: "B1" }];
const book = sampleBook({ Ducts: ducts, Other: { rows: [[1], [2], [3], ["as entered"]] } }, NAMES);
const copyOf = (): Workbook => clubCopy(book, ORDER).book.workbook;
const again = (workbook: Workbook): Workbook | null =>
  revive({ workbook, shown: new Map() } satisfies Calculated).workbook;

const contents = (sheet: Sheet): Record<string, unknown> =>
  Object.fromEntries(
    sheet.cells.flatMap((cell) =>
      "formula" in cell ? [[cell.at, cell.formula]] : cell.value === null ? [] : [[cell.at, cell.value]],
    ),
  );

test("the formulas and inputs come back, and nothing of the copy stays", () => {
  const back = again(copyOf())!;
  expect(back.sheets.map(({ name }) => name)).toEqual(["Ducts", "Other"]);
  expect(back.sheets.map(contents)).toEqual(book.workbook.sheets.map(contents));
  expect(back.sheets[0]!.cells.filter(({ note }) => note !== undefined)).toEqual([]);
  expect(back.sheets[0]!.flags).toEqual([]);
  expect(back.sheets[0]!.lists).toEqual(book.workbook.sheets[0]!.lists);
  expect(back.names).toEqual(NAMES);
});

// A list refuses another word only where it is typed; pasted it would say of the same numbers that they are others.
test("a formula that names the system says in a copy that another word changes nothing", () => {
  const [{ cells, flags }] = copyOf().sheets.filter(({ name }) => name === "Ducts") as [Sheet];
  const formula = `=IF(Other!$A$4&""="as entered",IF(Other!$A$4="as calibrated","by readings, "&A1,"as typed")&".","Another word in Other!A4 changes no number of this copy: all stay as entered")`;
  expect(cells).toContainEqual({ at: "A12", formula });
  expect(flags).toContainEqual({ range: "A12", containsText: "Another word", style: "flag" });
});

test("inputs come back as they stand in the copy now", () => {
  const copy = copyOf();
  const typed = copy.sheets.map((sheet): Sheet =>
    sheet.name === "Ducts"
      ? { ...sheet, cells: sheet.cells.map((cell): SheetCell => (cell.at === "A1" ? { at: "A1", value: 6 } : cell)) }
      : sheet,
  );
  expect(contents(again({ ...copy, sheets: typed })!.sheets[0]!)).toMatchObject({ A1: 6, A4: "=DUCT.AREA(A1,,units)" });
});

test("a sheet that was renamed and rows that were added move the formulas along", () => {
  const moved = (formula: string): string =>
    formula
      .replaceAll("Ducts!$A$4", "'My ducts'!$A$5")
      .replaceAll("Ducts!A1", "'My ducts'!A2")
      .replaceAll("Other!", "Others!");
  const copy = copyOf();
  const sheets = copy.sheets.map((sheet): Sheet => {
    if (sheet.name === "Ducts") {
      const cells = sheet.cells.map((cell): SheetCell => ({
        ...cell,
        at: cell.at.replace(/\d+/, (row) => String(Number(row) + 1)),
      }));
      return { ...sheet, name: "My ducts", cells };
    }
    return sheet.name === "Original formulas"
      ? {
          ...sheet,
          cells: sheet.cells.map((cell) => ("formula" in cell ? { ...cell, formula: moved(cell.formula) } : cell)),
        }
      : sheet;
  });
  const back = again({ ...copy, sheets, names: [] })!;
  expect(contents(back.sheets[0]!)).toMatchObject({ A2: 4, A5: "=DUCT.AREA(A2,,units)" });
});

test("a formula whose cell was deleted in the copy is left out, the others come back", () => {
  const copy = copyOf();
  const sheets = copy.sheets.map((sheet): Sheet => ({
    ...sheet,
    cells: sheet.cells.map((cell) =>
      "formula" in cell && cell.formula === "=ROWS(Ducts!$A$4)" ? { ...cell, formula: "=ROWS(#REF!)" } : cell,
    ),
  }));
  const back = contents(again({ ...copy, sheets })!.sheets[0]!);
  expect(back.A6).toBe("=DUCT.SOLVE($A$1:B$2,Other!A1:A3)");
  expect(String(back.A4)).not.toContain("DUCT");
});

test("a book that is no club copy, or one of values, gives nothing", () => {
  expect(revive(book)).toEqual({ workbook: null, left: [] });
  expect(revive(clubCopy(book, { ...ORDER, kind: "values" }).book)).toEqual({ workbook: null, left: [] });
});
