/** Formulas that are alike but for their references reach the grid as if each were entered; what one is when it is entered, the library says. */
import type { CompiledFormula as Compiled } from "@odoo/o-spreadsheet";
import fc from "fast-check";
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

/** What the library took a formula apart into. */
const tokensOf = (compiled: Compiled): unknown => (compiled as unknown as { readonly tokens: unknown }).tokens;

/** What the library took apart to read the formulas of these cells: the same for two of them that are alike. */
function takenApart(contents: Readonly<Record<string, string>>): unknown[] {
  const cells = Object.entries(contents).map(([at, text]) =>
    text.startsWith("=") ? { at, formula: text } : { at, value: text },
  );
  const others = ["Two", "Zwölf"].map((name) => sheetOf(name, [{ at: "A1", value: 1 }]));
  const { getters } = gridModel({ name: "Alike", sheets: [sheetOf("One", cells), ...others], names: [] });
  return cells.map(({ at }) => {
    const { column, row } = placeOf(at);
    const cell = getters.getCell({ sheetId: getters.getSheetIdByName("One")!, col: column - 1, row: row - 1 });
    return cell?.isFormula === true ? tokensOf(cell.compiledFormula) : at;
  });
}

test("formulas with other references alone are taken apart once, down, across, and below a value", () => {
  const [first, ...others] = takenApart({
    A1: "=B1*Two!$C$1+SUM(D$1:D1)",
    A2: "=B2*Two!$C$1+SUM(D$1:D2)",
    A10: "=$AB10*Zwölf!XFD1048576+SUM(D1:$D10)",
    C1: "=A1*C2+SUM(E1:F2)",
  });
  for (const one of others) expect(one).toBe(first);
  const [text, textBelow, value, belowValue, other] = takenApart({
    C1: '=IF(B1="A1, $B$2","",ATAN2(B1,2))',
    C2: '=IF(B2="A1, $B$2","",ATAN2(B2,2))',
    C3: "5",
    C4: '=IF(B4="A1, $B$2","",ATAN2(B4,2))',
    D4: '=IF(B4="A1, $B$3","",ATAN2(B4,2))',
  });
  expect(textBelow).toBe(text);
  expect(belowValue).toBe(text);
  expect(value).toBe("C3");
  expect(other).not.toBe(text);
});

test("and once for all books", () => {
  const [one] = takenApart({ A1: "=B1+777+C1" });
  expect(takenApart({ B7: "=B7+777+C9" })[0]).toBe(one);
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
])("%s is read by itself", (_, first, second) => {
  const [one, other] = takenApart({ F1: first, F2: second });
  expect(other).not.toBe(one);
});

test("formulas share the ranges that they name, and no edit changes one in place", () => {
  const cells = ["B1", "B2", "B3", "B4"].map((at) => ({ at, formula: "=SUM($A$1:$A$9)+Two!A1+A2" }));
  const model = gridModel({
    name: "Shared",
    sheets: [sheetOf("One", cells), sheetOf("Two", [{ at: "A1", value: 1 }])],
    names: [],
  });
  const { getters } = model;
  const [one, two] = ["One", "Two"].map((name) => getters.getSheetIdByName(name)!) as [string, string];
  const held = (): Compiled[] =>
    getters.getCells(one).flatMap((cell) => (cell.isFormula ? [cell.compiledFormula] : []));
  const ranges = held().flatMap(({ rangeDependencies }) => rangeDependencies);
  expect(ranges).toHaveLength(12);
  expect(new Set(ranges).size).toBe(3);
  const before = JSON.stringify(ranges);
  const seen = (): string[] => held().map((compiled) => compiled.toFormulaString(getters));
  const after = (work: () => void): string[] => {
    work();
    const now = seen();
    expect(JSON.stringify(ranges)).toBe(before);
    model.dispatch("REQUEST_UNDO");
    expect(seen()).toEqual(Array(4).fill("=SUM($A$1:$A$9)+Two!A1+A2"));
    return now;
  };
  const rows = (sheetId: string, sheetName: string) => ({ sheetId, sheetName, dimension: "ROW" as const });
  const inserted = after(() =>
    model.dispatch("ADD_COLUMNS_ROWS", { ...rows(one, "One"), base: 0, position: "before", quantity: 2 }),
  );
  expect(inserted).toEqual(Array(4).fill("=SUM($A$3:$A$11)+Two!A1+A4"));
  const elsewhere = after(() =>
    model.dispatch("ADD_COLUMNS_ROWS", { ...rows(two, "Two"), base: 0, position: "before", quantity: 1 }),
  );
  expect(elsewhere).toEqual(Array(4).fill("=SUM($A$1:$A$9)+Two!A2+A2"));
  const deleted = after(() => model.dispatch("REMOVE_COLUMNS_ROWS", { ...rows(one, "One"), elements: [4, 5] }));
  expect(deleted).toEqual(Array(4).fill("=SUM($A$1:$A$7)+Two!A1+A2"));
  const renamed = after(() => model.dispatch("RENAME_SHEET", { sheetId: two, oldName: "Two", newName: "Three" }));
  expect(renamed).toEqual(Array(4).fill("=SUM($A$1:$A$9)+Three!A1+A2"));
  const duplicated = after(() =>
    model.dispatch("DUPLICATE_SHEET", { sheetId: one, sheetIdTo: "copy", sheetNameTo: "Copy" }),
  );
  expect(duplicated).toEqual(Array(4).fill("=SUM($A$1:$A$9)+Two!A1+A2"));
});

test("what is entered later, the library reads by itself", () => {
  const { Compile } = library.CompiledFormula as { Compile: unknown };
  takenApart({ A1: "=B1+1" });
  expect((library.CompiledFormula as { Compile: unknown }).Compile).toBe(Compile);
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

test("law: whatever is alike, the grid holds each formula as if it were entered", () => {
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

test("a club copy is held as if each formula were entered, and few of its formulas are taken apart", () => {
  const book = budgetBook({ units: "IP", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
  const calculated = gridOfBook(book).calculated(book);
  const { workbook } = clubCopy(calculated, { kind: "formulas", date: "2000-01-01", version: "0" }).book;
  // nothing of the copy is computed, which is not asked here
  const evaluation = library.registries.coreViewsPluginRegistry.get("evaluation");
  const computing = jest.spyOn(evaluation.prototype, "finalize").mockImplementation(() => undefined);
  expect(otherwise(workbook)).toEqual([]);
  const { getters } = gridModel(workbook);
  const taken = getters
    .getSheetIds()
    .flatMap((sheetId) => getters.getCells(sheetId))
    .flatMap((cell) => (cell.isFormula ? [tokensOf(cell.compiledFormula)] : []));
  expect(new Set(taken).size).toBeLessThan(taken.length / 5);
  computing.mockRestore();
});
