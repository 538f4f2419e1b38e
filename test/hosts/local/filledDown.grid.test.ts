/** Formulas that are filled down reach the grid as if each were entered; what one is when it is entered, the library says. */
import type { CompiledFormula as Compiled } from "@odoo/o-spreadsheet";
import fc from "fast-check";
import { filledDown } from "../../../src/hosts/local/filledDown";
import type { GridModel } from "../../../src/hosts/local/grid";
import { gridModel } from "../../../src/hosts/local/gridModel";
import { clubCopy } from "../../../src/share/clubCopy";
import { cellAddress, columnLetters, placeOf } from "../../../src/sheets/address";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import type { Workbook } from "../../../src/sheets/workbook";
import { library } from "../../support/gridLibrary";
import { gridOfBook } from "../../support/gridOfBook";
import { sheetOf } from "../../support/sheetOf";

/** What the library knows of a formula and computes it by. */
const known = (compiled: Compiled, { getters }: GridModel): readonly string[] => [
  compiled.toFormulaString(getters),
  JSON.stringify(compiled.rangeDependencies),
  JSON.stringify([compiled.literalValues, compiled.symbols, compiled.isBadExpression, compiled.sheetId]),
];

/** Every formula of a book that the grid holds otherwise than if it were entered by itself, with what it holds. */
function otherwise(workbook: Workbook): string[] {
  const model = gridModel(workbook);
  const { getters } = model;
  return workbook.sheets.flatMap(({ name, cells }) => {
    const sheetId = getters.getSheetIdByName(name)!;
    return cells.flatMap((cell) => {
      if (!("formula" in cell)) return [];
      const { column, row } = placeOf(cell.at);
      const held = getters.getCell({ sheetId, col: column - 1, row: row - 1 });
      if (held?.isFormula !== true) return [`${name}!${cell.at}: no formula`];
      const entered = library.CompiledFormula.Compile(cell.formula, sheetId, getters);
      const [is, ought] = [known(held.compiledFormula, model), known(entered, model)];
      const isSame =
        is.every((one, index) => one === ought[index]) &&
        (entered.isBadExpression || held.compiledFormula.execute === entered.execute);
      return isSame ? [] : [`${name}!${cell.at}: ${cell.formula} is ${JSON.stringify(is)}`];
    });
  });
}

test("a formula that is filled down is written once, with the references of each row spelled out", () => {
  const contents = {
    A1: "=B1*Two!$C$1+SUM(D$1:D1)",
    A2: "=B2*Two!$C$1+SUM(D$1:D2)",
    A10: "=$AB10*Zwölf!XFD1048576+SUM(D1:$D10)",
    C1: '=IF(B1="A1, $B$2","",ATAN2(B1,2))',
    C2: '=IF(B2="A1, $B$2","",ATAN2(B2,2))',
  };
  expect(filledDown(contents)).toEqual({
    A1: "=B1*Two!$C$1+SUM(D$1:D1)",
    A2: { R: ["B2", "Two!$C$1", "D$1:D2"] },
    A10: { R: ["$AB10", "Zwölf!XFD1048576", "D1:$D10"] },
    C1: '=IF(B1="A1, $B$2","",ATAN2(B1,2))',
    C2: { R: ["B2", "B2"] },
  });
});

test.each([
  ["another text", '=A1&"A1"', '=A2&"A2"'],
  ["another number", "=A1*2", "=A2*3"],
  ["a range and a cell", "=A1+1", "=A2:A3+1"],
  ["lower case", "=a1+B1", "=a2+B2"],
  ["a quoted sheet", "='Two 2'!A1+B1", "='Two 2'!A2+B2"],
  ["a whole column", "=SUM(A:A)+B1", "=SUM(A:A)+B2"],
  ["a range to another's answer", "=SUM(A1:INDEX(A1:A9,2))", "=SUM(A2:INDEX(A2:A9,2))"],
  ["a spilled cell", "=SUM(A1#)", "=SUM(A2#)"],
  ["an array", "=A1+{1,2}", "=A2+{1,2}"],
  ["a missing reference", "=A1+#REF!", "=A2+#REF!"],
  ["a text that the grid ends elsewhere", '="\\"&A1&"\\"', '="\\"&A2&"\\"'],
  ["a function that the grid does not know", "=LOG10(A1)", "=LOG10(A2)"],
  ["no formula at all", "=A1+", "=A2+"],
  ["no reference", "=1+1", "=1+1"],
  ["a text", "A1", "A2"],
])("%s is handed as it is", (_, first, second) => {
  expect(filledDown({ F1: first, F2: second })).toEqual({ F1: first, F2: second });
});

test("a formula begins anew below a value, and beside another column", () => {
  const contents = { A1: "=B1", A2: "5", A3: "=B3", C1: "=D1", C2: "=D2*2" };
  expect(filledDown(contents)).toEqual(contents);
});

/** How references are spelled from row to row: the sheet, and which of column and row stay. */
const reference = fc
  .record({
    sheet: fc.constantFrom("", "", "Two!", "One!", "Zwölf!", "'Two 2'!", "A1!", "No_such!"),
    column: fc.integer({ min: 1, max: 800 }),
    fixed: fc.constantFrom(["", ""], ["$", ""], ["", "$"], ["$", "$"]),
    row: fc.integer({ min: 1, max: 30 }),
    to: fc.option(fc.integer({ min: 0, max: 5 }), { freq: 2 }),
    step: fc.constantFrom(1, 1, 1, 0, 2, -1),
  })
  .map(({ sheet, column, fixed: [columnFixed, rowFixed], row, to, step }) => (down: number) => {
    const at = (across: number, further: number): string => {
      const moved = Math.max(1, row + further + step * down);
      return `${columnFixed}${columnLetters(column + across)}${rowFixed}${moved}`;
    };
    return to === null ? `${sheet}${at(0, 0)}` : `${sheet}${at(0, 0)}:${at(to % 2, to)}`;
  });

/** What stands between references, some of it like one. */
const frame = fc.constantFrom(
  (one: string, other: string) => `=${one}+${other}`,
  (one: string, other: string) => `= SUM( ${one} , ${other} )*1.50`,
  (one: string, other: string) => `=IF(ISNUMBER(${one}),${other},"A1 and $B$2")`,
  (one: string, other: string) => `=ATAN2(${one},${other})&"it""s A1"`,
  (one: string, other: string) => `=LOG10(${one})+${other}`,
  (one: string, other: string) => `=Two2(${one})+${other}`,
  (one: string, other: string) => `=${one}:${other}`,
  (one: string, other: string) => `=-${one}%*1E5+a1+T1.5+${other}`,
  (one: string, other: string) => `="\\"&${one}&"\\"&${other}`,
  (one: string, other: string) => `=COUNTIF(${one},"<>"&${other})=TRUE`,
  (one: string, other: string) => `=SUM(AB:AC,3:$4,${one})+${other}`,
  (one: string, other: string) => `=${one}&${other}&"A1`,
  (one: string, other: string) => `=AIR1X+${one}*${other}`,
);

const column = fc
  .record({
    frame,
    one: reference,
    other: reference,
    odd: fc.option(fc.record({ row: fc.nat(7), content: fc.constantFrom("=B1", "=1+1", "=Two!B7+C9", "7", "word") })),
  })
  .map(({ frame, one, other, odd }) =>
    Array.from({ length: 8 }, (_, down) => (odd?.row === down ? odd.content : frame(one(down), other(down)))),
  );

test("law: whatever is filled down, the grid holds each formula as if it were entered", () => {
  fc.assert(
    fc.property(fc.array(column, { minLength: 1, maxLength: 4 }), (columns) => {
      const cells = columns.flatMap((contents, across) =>
        contents.map((content, down) => {
          const at = cellAddress(across + 1, down + 1);
          return content.startsWith("=") ? { at, formula: content } : { at, value: content };
        }),
      );
      const others = ["Two", "Zwölf", "Two 2", "A1"].map((name) => sheetOf(name, [{ at: "A1", value: 1 }]));
      expect(otherwise({ name: "Law", sheets: [sheetOf("One", cells), ...others], names: [] })).toEqual([]);
    }),
  );
});

test.each(["example", "empty"] as const)("a book is held as if each formula were entered: %s", (contents) => {
  const book = budgetBook({ units: "SI", sheets: sheetKeys, contents }, { sheets: [], names: [] });
  gridOfBook(book); // with our functions, so that their formulas are read too
  expect(otherwise(book)).toEqual([]);
});

test("a club copy is held as if each formula were entered, and most of it is filled down", () => {
  const book = budgetBook({ units: "IP", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
  const calculated = gridOfBook(book).calculated(book);
  const { workbook } = clubCopy(calculated, { kind: "formulas", date: "2000-01-01", version: "0" }).book;
  const filled = workbook.sheets.flatMap(({ cells }) =>
    Object.values(
      filledDown(Object.fromEntries(cells.flatMap((cell) => ("formula" in cell ? [[cell.at, cell.formula]] : [])))),
    ),
  );
  expect(filled.filter((content) => typeof content !== "string").length).toBeGreaterThan(filled.length / 2);
  // nothing of the copy is computed, which is not asked here
  const evaluation = library.registries.coreViewsPluginRegistry.get("evaluation");
  const computing = jest.spyOn(evaluation.prototype, "finalize").mockImplementation(() => undefined);
  expect(otherwise(workbook)).toEqual([]);
  computing.mockRestore();
});
