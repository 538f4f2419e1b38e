import { clubCopy } from "../../src/share/clubCopy";
import { type Compute, recomputed } from "../../src/share/recomputed";
import { TOO_MUCH_WORK } from "../../src/sheets/tooMuchWork";
import type { ShownCell } from "../../src/sheets/calculated";
import type { Workbook } from "../../src/sheets/workbook";
import { type Formula, sampleBook } from "./sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const formula = (code: string, shows: ShownCell["value"]): Formula => ({ code, shows: [[shows]] });

/** An engine that knows what some cells come to, and 0 of any other formula; typed values are what they are. */
const engine =
  (known: Readonly<Record<string, ShownCell["value"]>>, asked: Workbook[] = []): Compute =>
  (workbook) => {
    asked.push(workbook);
    return new Map(
      workbook.sheets.map(({ name, cells }) => [
        name,
        new Map(
          cells.map((cell) => [
            cell.at,
            { value: "formula" in cell ? (known[`${name}!${cell.at}`] ?? 0) : cell.value },
          ]),
        ),
      ]),
    );
  };

const contentIn = ({ sheets }: Workbook, name: string, at: string): unknown => {
  const cell = sheets.find((sheet) => sheet.name === name)?.cells.find((one) => one.at === at);
  return cell !== undefined && "formula" in cell ? cell.formula : cell?.value;
};

test("each formula of the copy has a value, those of its own sheets too", () => {
  const book = sampleBook({ One: { rows: [[4]], formulas: { B1: formula("=DUCT.AREA(A1)", 0.087) } } });
  const { copy, differs, unchecked } = recomputed(book, clubCopy(book, ORDER), engine({ "One!B1": 0.087 }));
  expect({ differs, unchecked }).toEqual({ differs: [], unchecked: [] });
  const without = copy.book.workbook.sheets.flatMap(({ name, cells }) =>
    cells.filter((cell) => "formula" in cell && copy.book.shown.get(name)?.get(cell.at) === undefined),
  );
  expect(without).toEqual([]);
});

test("a cell that a copy shows otherwise is named", () => {
  const book = sampleBook({ One: { rows: [[4]], formulas: { B1: formula("=DUCT.AREA(A1)", 0.087) } } });
  const { differs } = recomputed(book, clubCopy(book, ORDER), engine({ "One!B1": 0.088 }));
  expect(differs).toEqual([{ sheet: "One", at: "B1", inCopy: 0.088, inBook: 0.087 }]);
});

test.each(["=TODAY()", "=A1*rand ()", '=IF(A1="RAND(",NOW(),1)'])(
  "%s changes by itself, so its value of the day is computed with",
  (code) => {
    const book = sampleBook({ One: { rows: [[4]], formulas: { B1: formula(code, 46_000) } } });
    const asked: Workbook[] = [];
    const { differs, unchecked } = recomputed(book, clubCopy(book, ORDER), engine({}, asked));
    expect({ differs, unchecked }).toEqual({ differs: [], unchecked: ["One!B1"] });
    expect(asked.map((workbook) => contentIn(workbook, "One", "B1"))).toEqual([46_000]);
  },
);

test.each<[string, ShownCell["value"]]>([
  ["a function that the engine does not have", { error: "#NAME?" }],
  ["more work than the engine does", { error: "#VALUE!", message: TOO_MUCH_WORK }],
])("of %s the book's value is computed with; the copy keeps the formula", (_, shown) => {
  const book = sampleBook({
    One: { rows: [[4]], formulas: { B1: formula("=ONLYTHERE(A1)", 12), C1: formula("=B1", 0) } },
  });
  const asked: Workbook[] = [];
  const { copy, differs, unchecked } = recomputed(book, clubCopy(book, ORDER), engine({ "One!B1": shown }, asked));
  expect({ differs, unchecked }).toEqual({ differs: [], unchecked: ["One!B1"] });
  expect(asked.map((workbook) => contentIn(workbook, "One", "B1"))).toEqual(["=ONLYTHERE(A1)", 12]);
  expect(contentIn(copy.book.workbook, "One", "B1")).toBe("=ONLYTHERE(A1)");
  expect(copy.book.shown.get("One")!.get("B1")).toEqual({ value: 12 });
});

test("a formula of ours that shows such an error in its copy is no such formula", () => {
  const book = sampleBook({ One: { rows: [[4]], formulas: { B1: formula("=DUCT.AREA(A1)", 0.087) } } });
  const { differs } = recomputed(book, clubCopy(book, ORDER), engine({ "One!B1": { error: "#NAME?" } }));
  expect(differs.map(({ at }) => at)).toEqual(["B1"]);
});
