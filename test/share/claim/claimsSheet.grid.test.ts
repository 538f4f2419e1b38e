/** The sheet Claims of a copy: a number typed over the vendor's is judged as in the live book. */
import { clubCopy } from "../../../src/share/clubCopy";
import { CHECKS } from "../../../src/sheets/book/claims/layout";
import { factCell } from "../../support/factCell";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { inGrid } from "../../support/grid";
import { gridOfBook } from "../../support/gridOfBook";

test.each(["IP", "SI"] as const)("in %s what is typed over a number of the data sheet moves the verdicts", (units) => {
  const workbook = budgetBook({ sheets: ["start", "claims"], units, contents: "example" }, { sheets: [], names: [] });
  const live = gridOfBook(workbook);
  const copy = clubCopy(live.calculated(workbook), { kind: "formulas", date: "2026-11-25", version: "1.0.0" });
  expect([...copy.fixed, ...copy.untranslated].filter(({ sheet }) => sheet === "Claims")).toEqual([]);
  const claims = copy.book.workbook.sheets.find(({ name }) => name === "Claims")!;
  const addresses = claims.cells.flatMap(({ at }) => (/^[A-G]\d+$/.test(at) ? [at] : []));
  // A41 says what fills the table
  const wrong = (values: ReadonlyMap<string, unknown>): string[] =>
    addresses
      .filter((at) => at !== "A41")
      .flatMap((at) => {
        const [got, expected] = [values.get(at), live.value("Claims", at)].map((one) =>
          `${one as string | number}`.replace(/^(undefined|null)$/, ""),
        );
        const isClose = Number(got) !== 0 && Math.abs(Number(got) / Number(expected) - 1) < 1e-9;
        return got === expected || isClose ? [] : [`${at} ${got} instead of ${expected}`];
      });
  const typed = (at: string, value: string | number) => ({
    ...copy.book.workbook,
    sheets: copy.book.workbook.sheets.map((sheet) =>
      sheet !== claims ? sheet : { ...sheet, cells: [...sheet.cells.filter((cell) => cell.at !== at), { at, value }] },
    ),
  });
  const before = wrong(inGrid(copy.book.workbook).get("Claims")!);
  live.type("Claims", "B11", "15000");
  const after = wrong(inGrid(typed("B11", 15000)).get("Claims")!);
  expect([before, after]).toEqual([[], []]);
});

// Our functions are handed the text of a percentage in the page, the number behind it by other programs; what a vendor prints stays as it is typed.
test("a filter's rating in percent stays as it is typed, in the sheet and in its copy", () => {
  const workbook = budgetBook(
    { sheets: ["start", "claims"], units: "SI", contents: "empty" },
    { sheets: [], names: [] },
  );
  const live = gridOfBook(workbook);
  const at = factCell("filter rating");
  live.type("Claims", at, "95%");
  expect(live.value("Claims", at)).toBe("95%");
  expect(live.value("Claims", `B${CHECKS + 1}`)).toBe("95%");
  const claims = workbook.sheets.find(({ name }) => name === "Claims")!;
  const cells = claims.cells.map((cell) => (cell.at === at ? { ...cell, value: "95%" } : cell));
  const filled = {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => (sheet === claims ? { ...claims, cells } : sheet)),
  };
  const copy = clubCopy(live.calculated(filled), { kind: "formulas", date: "2026-11-25", version: "1.0.0" });
  const copied = inGrid(copy.book.workbook).get("Claims")!;
  for (const letter of ["A", "B", "C", "D", "E", "F"])
    // that grid is handed a text which looks like a number behind an apostrophe
    expect(String(copied.get(`${letter}${CHECKS + 1}`) ?? "").replace(/^'/, "")).toBe(live.value("Claims", `${letter}${CHECKS + 1}`) ?? ""); // prettier-ignore
});

test.each(["5 µm", "95%", "0012", "2026-11-30", "1/2", "TRUE", "0.5 micron"])(
  "a filter's rating of %p in a book that is opened stands there as it is, without an apostrophe",
  (rating) => {
    const workbook = budgetBook({ sheets: ["claims"], units: "SI", contents: "empty" }, { sheets: [], names: [] });
    const at = factCell("filter rating");
    const sheets = workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => (sheet.name === "Claims" && cell.at === at ? { ...cell, value: rating } : cell)),
    }));
    expect(gridOfBook({ ...workbook, sheets }).value("Claims", at)).toBe(rating);
  },
);
