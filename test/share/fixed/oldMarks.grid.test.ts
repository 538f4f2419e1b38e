/** Which cells of a copy are struck out once an input has changed, with the words that this goes by computed in the grid. */
import { clubCopy } from "../../../src/share/clubCopy";
import { readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import type { GridModel } from "../../../src/hosts/local/grid";
import { addPlugins } from "../../../src/hosts/local/plugins";
import { calculatedOf } from "../../../src/hosts/local/readGrid";
import { cellAddress } from "../../../src/sheets/address";
import { addressesIn, rectangleOf } from "../../../src/sheets/rectangle";
import type { CellValue, Sheet, Workbook } from "../../../src/sheets/workbook";
import { gridOf, inGrid } from "../../support/grid";
import { partsOf } from "../../support/xlsxParts";
import { sampleBook } from "../sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

/** F has two fixed answers, one of T!A1 and one of T!B1; Page reads the first, or both, or neither. */
const book = sampleBook({
  T: { rows: [[4, 5]] },
  F: {
    formulas: {
      A3: {
        code: "=DUCT.SOLVE(T!A1,T!A1)",
        shows: [
          ["Run", "Airflow"],
          ["saw", 400],
        ],
      },
      A9: { code: "=DUCT.GAINS(T!B1)", shows: [[7]] },
      A12: { code: "=B4*2", shows: [[800]] },
    },
  },
  Page: {
    formulas: {
      A9: { code: "=F!A12+1", shows: [[801]] },
      B9: { code: "=F!A12+F!A9", shows: [[807]] },
      C9: { code: "=T!A1", shows: [[4]] },
      D9: { code: '=F!A4&""', shows: [["saw"]] },
      E9: { code: '=IF(ISFORMULA(F!A9),T!A1,"")', shows: [[4]] }, // rests on no number of A9
    },
    with: {
      cells: [{ at: "F20", value: "mine" }],
      print: { paper: "A4", landscape: false },
    },
  },
});
const { workbook } = clubCopy(book, ORDER).book;

/** The cells that are struck out on each sheet. */
function struck(copy: Workbook): Record<string, string[]> {
  const values = inGrid(copy);
  const of = ({ name, oldMarks = [] }: Sheet): string[] =>
    oldMarks.flatMap(({ ranges, state }) =>
      values.get(name)!.get(state.replaceAll("$", "")) === "as made"
        ? []
        : ranges.flatMap((one) => addressesIn(rectangleOf(one))),
    );
  return Object.fromEntries(
    copy.sheets.map((sheet) => [sheet.name, of(sheet).sort()]).filter(([, at]) => at!.length > 0),
  );
}

const typed = (sheet: string, at: string, value: CellValue): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((one) =>
    one.name === sheet ? { ...one, cells: one.cells.map((cell) => (cell.at === at ? { at, value } : cell)) } : one,
  ),
});

test("a fixed answer and what rests on it are struck out by their own inputs alone", () => {
  expect(struck(workbook)).toEqual({});
  expect(struck(typed("T", "A1", 5))).toEqual({ F: ["A12", "A3", "A4", "B3", "B4"], Page: ["A9", "B9", "D9"] });
  expect(struck(typed("T", "B1", 6))).toEqual({ F: ["A9"], Page: ["B9"] });
});

test("the counts stand right of what the sheet has, and are not printed", () => {
  const page = workbook.sheets.find(({ name }) => name === "Page")!;
  expect(page.oldMarks!.map(({ state }) => state)).toEqual(["$J$2", "$J$3"]);
  expect(page.print).toEqual({ paper: "A4", landscape: false, area: "A1:F20" });
});

test("in a file a number says old, a text keeps its format, and each rectangle has a rule", async () => {
  const parts = partsOf(await writeBook({ workbook, shown: book.shown }, { title: "t", recalculate: true }));
  const rules = [
    ...parts
      .get("xl/worksheets/sheet4.xml")!
      .matchAll(/sqref="([^"]*)"><cfRule type="expression"[^>]*dxfId="(\d+)"[^>]*><formula>([^<]*)</g),
  ];
  expect(
    rules.map(
      ([, range, , formula]) =>
        `${range} ${formula!.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"')}`,
    ),
  ).toEqual(['A9 AND($J$2="changed",A9<>"")', 'D9 AND($J$2="changed",D9<>"")', 'B9 AND($J$3="changed",B9<>"")']);
  const styles = [...parts.get("xl/styles.xml")!.matchAll(/<dxf>(.*?)<\/dxf>/gs)].map(([, style]) => style!);
  const looks = rules.map(([, , id]) => styles[Number(id)]!);
  expect(looks.every((style) => style.includes("<strike/>"))).toBe(true);
  expect(looks.map((style) => /formatCode="([^"]*)"/.exec(style)?.[1]?.replaceAll("&quot;", '"'))).toEqual([
    '"old "General;"old "-General',
    undefined,
    '"old "General;"old "-General',
  ]);
});

/** The cells that the grid of the page itself shows struck out. */
function struckInPage(model: GridModel): Record<string, string[]> {
  const { getters } = model;
  const of = (sheetId: string): string[] =>
    getters.getCells(sheetId).flatMap(({ id }) => {
      const position = getters.getCellPosition(id);
      const { strikethrough } = getters.getCellComputedStyle(position);
      return strikethrough === true ? [cellAddress(position.col + 1, position.row + 1)] : [];
    });
  return Object.fromEntries(
    getters.getSheetIds().flatMap((id) => {
      const at = of(id).sort();
      return at.length === 0 ? [] : [[getters.getSheetName(id), at]];
    }),
  );
}

test("a copy that is opened in the page strikes out the same cells, and hands its marks on", async () => {
  const file = await writeBook({ workbook, shown: book.shown }, { title: "t", recalculate: true });
  const opened = (await readBook(file)).workbook;
  const marks = ({ sheets }: Workbook): unknown =>
    sheets.map(({ name, oldMarks = [] }) => [
      name,
      oldMarks.map(({ ranges, state }) => [state, ranges.flatMap((one) => addressesIn(rectangleOf(one))).sort()]),
    ]);
  expect(marks(opened)).toEqual(marks(workbook));
  addPlugins(); // those of the page, which keep what the grid does not
  const model: GridModel = gridOf(opened);
  expect(marks(calculatedOf(model).workbook)).toEqual(marks(workbook));
  expect(struckInPage(model)).toEqual({});
  const sheetId = model.getters.getSheetIds().find((id) => model.getters.getSheetName(id) === "T")!;
  model.dispatch("UPDATE_CELL", { sheetId, col: 0, row: 0, content: "5" });
  expect(struckInPage(model)).toEqual(struck(typed("T", "A1", 5)));
});

test("another word pasted into the units cell renames no heading, and makes what is fixed old", () => {
  const sheets = {
    T: { rows: [["SI"]] },
    F: {
      formulas: {
        A3: { code: "=DUCT.GAINS(T!A1,units)", shows: [[7]] },
        A9: { code: '=IF(units="SI","m/s","fpm")', shows: [["m/s"]] },
      },
    },
  };
  const made = clubCopy(sampleBook(sheets, [{ name: "units", sheet: "T", at: "A1" }]), ORDER).book.workbook;
  const pasted = {
    ...made,
    sheets: made.sheets.map((one) => (one.name === "T" ? { ...one, cells: [{ at: "A1", value: "IP" }] } : one)),
  };
  const values = inGrid(pasted).get("F")!;
  expect(values.get("A9")).toBe("m/s");
  expect(struck(pasted)).toEqual({ F: ["A3"] });
});
