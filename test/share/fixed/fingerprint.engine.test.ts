/** The word beside a fixed number: any single input that differs turns it, and nothing else does. */
import fc from "fast-check";
import { clubCopy } from "../../../src/share/clubCopy";
import type { CellValue, SheetCell, Workbook } from "../../../src/sheets/workbook";
import { cellAddress } from "../../../src/sheets/address";
import type { EngineValues } from "../../support/engine";
import { hardRecalculation } from "../../support/hardRecalculation";
import { ironCalc } from "../../support/ironCalc";
import { hasLibreOffice } from "../../support/libreOffice";
import { sampleBook } from "../sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const OLD = "inputs changed since: these numbers are old";

/** A book in which one cell of SOLVE, beside each pair's first value, uses that value alone. */
const bookOf = (values: readonly CellValue[]) =>
  sampleBook({
    Inputs: { rows: values.map((value) => [value]) },
    Answers: {
      formulas: Object.fromEntries(
        values.map((_, index) => [
          cellAddress(1, index + 1),
          { code: `=DUCT.SOLVE(Inputs!A${index + 1},Inputs!A${index + 1})`, shows: [[index]] },
        ]),
      ),
    },
  });

/** The copy of a book whose inputs were changed after it was made. */
function changedCopy(before: readonly CellValue[], after: readonly CellValue[]): Workbook {
  const { workbook } = clubCopy(bookOf(before), ORDER).book;
  const cells = after.flatMap((value, index): SheetCell[] => (value === null ? [] : [{ at: `A${index + 1}`, value }]));
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => (sheet.name === "Inputs" ? { ...sheet, cells } : sheet)),
  };
}

/** What the check says of each pair, beside the fixed number. */
const saysOld = (values: EngineValues, count: number): boolean[] =>
  Array.from({ length: count }, (_, index) => values.get("Answers")!.get(`B${index + 1}`) === OLD);

const KINDS: readonly CellValue[] = [
  null,
  0,
  1,
  -1,
  0.1,
  0.1000000000001,
  1e-9,
  "0",
  "1",
  "-1",
  "a",
  "A",
  " a",
  "a ",
  "á",
  "=1",
  "#N/A",
  true,
  false,
  "true",
];
const pairs = KINDS.flatMap((before) => KINDS.map((after) => [before, after] as const));

/** Programs differ in what they keep apart: a truth value and its number are one in some. */
const isClear = (before: CellValue, after: CellValue): boolean =>
  [before, after].filter((value) => typeof value === "boolean").length !== 1;

function expectRight(values: EngineValues, list: readonly (readonly [CellValue, CellValue])[]): void {
  const said = saysOld(values, list.length);
  const wrong = list.filter(([before, after], index) => said[index] !== (before !== after));
  expect(wrong).toEqual([]);
}

const clear = pairs.filter(([before, after]) => isClear(before, after));
const office = hasLibreOffice ? test : test.skip;

office("every kind of change between every two values is caught in LibreOffice", async () => {
  const copy = changedCopy(
    clear.map(([before]) => before),
    clear.map(([, after]) => after),
  );
  expectRight(await hardRecalculation(copy), clear);
});

test("every kind of change is caught in the independent engine", () => {
  const some = clear.filter(
    ([before, after]) => before === after || KINDS.indexOf(before) < 3 || KINDS.indexOf(after) % 5 === 0,
  );
  expectRight(
    ironCalc(
      changedCopy(
        some.map(([before]) => before),
        some.map(([, after]) => after),
      ),
    ),
    some,
  );
});

test("every input that a fixed number uses has one comparison that its count holds", () => {
  const cell = fc.oneof(
    fc.constant(null),
    fc.double({ noNaN: true }),
    fc.string({ maxLength: 6 }).filter((text) => text !== ""),
  );
  fc.assert(
    fc.property(fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 6 }), (rows) => {
      const book = sampleBook({
        T: { rows },
        F: { formulas: { A1: { code: `=DUCT.SOLVE(T!A1:C${rows.length})`, shows: [[1]] } } },
      });
      const sheet = clubCopy(book, ORDER).book.workbook.sheets.find(({ name }) => name === "Fixed numbers")!;
      const formulas = sheet.cells.flatMap((one) => ("formula" in one ? [one] : []));
      const count = formulas.find(({ at }) => at === "D6")!.formula;
      const [, longer, first, last] = /^=SUM\(([A-Z]+\d+),([A-Z]+\d+):([A-Z]+\d+),A\d+\)$/.exec(count)!; // the last tells of Lookups
      const filled = rows.flat().filter((value) => value !== null).length;
      const stored = `A${Number(/\d+/.exec(longer!)![0]) + 1}:C${Number(/\d+/.exec(last!)![0])}`;
      const whole = `'T'!$A$1:$C$${rows.length}`;
      expect(formulas.find(({ at }) => at === longer)!.formula).toBe(
        `=IF(COUNTA(${whole})=${filled},IF(AND(ROWS(${whole})*COLUMNS(${whole})=${3 * rows.length},IFERROR(SUMPRODUCT((${whole}<>${stored})+0),0)>SUM(${first!}:${last!})),1,0),1)`,
      );
      for (let row = 0; row < rows.length; row++) {
        for (const column of ["A", "B", "C"]) {
          const watching = formulas.filter(({ formula }) => formula.includes(`ISTEXT('T'!$${column}$${row + 1})`));
          expect(watching).toHaveLength(1);
          expect(inside(watching[0]!.at, first!, last!)).toBe(true);
        }
      }
    }),
    { numRuns: 60 },
  );
});

const inside = (at: string, first: string, last: string): boolean => {
  const [letters, row] = [/[A-Z]+/.exec(at)![0], Number(/\d+/.exec(at)![0])];
  return (
    letters >= first.replace(/\d/g, "") &&
    letters <= last.replace(/\d/g, "") &&
    row >= Number(/\d+/.exec(first)![0]) &&
    row <= Number(/\d+/.exec(last)![0])
  );
};
