/**
 * The values in the file, against direct calls of the built functions: no grid in between. The arguments are taken from the
 * file itself by exceljs, so the two ways to a value share the functions and nothing else.
 */
import { tokenize } from "@borgar/fx";
import ExcelJS from "exceljs";
import { calculate } from "../../../scripts/calculate";
import { readRange } from "../../../src/sheets/rangeRef";
import { placesIn } from "../../../src/sheets/rectangle";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { cellAddress, placeOf } from "../../../src/sheets/address";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { singleCellsSheet } from "../../../src/sheets/demo/singleCellsSheet";
import { HostError, loadBundle, readMetadata } from "../loadBundle";
import { sheetKeys } from "../../../src/sheets/sheetKeys";

interface Call {
  readonly sheet: string;
  readonly at: string;
  readonly name: string;
  readonly args: readonly string[];
}

const { call } = loadBundle();
const { functions } = readMetadata();

const valueOf = (cell: ExcelJS.Cell): unknown => {
  const { value } = cell;
  const isComputed = typeof value === "object" && value !== null && ("formula" in value || "sharedFormula" in value);
  const plain: unknown = isComputed ? cell.result : value; // the value's own result lacks a 0
  return plain ?? null;
};

const errorOf = (value: unknown): string | undefined =>
  typeof value === "object" && value !== null && "error" in value ? String(value.error) : undefined;

/** Calls of ours that are a whole formula, or what it comes to after its guards: IF(nothing there, words, call). */
const CALL = /^(?:_xldudf_|IF\(.*,_xldudf_)DUCT_(\w+)\(([^()]*)\)\)*$/s;

/** A formula of a book that goes by what is entered, without what it would be as calibrated. */
function asEntered(formula: string): string {
  const choice = /IF\((?:Flow!)?\$B\$2="as calibrated",/.exec(formula);
  if (choice === null) return formula;
  let depth = 0;
  let comma = 0;
  let at = choice.index + choice[0].length;
  for (; depth >= 0; at++) {
    const sign = formula.charAt(at);
    if (sign === "(") depth++;
    else if (sign === ")") depth--;
    else if (sign === "," && depth === 0) comma = at;
  }
  return asEntered(formula.slice(0, choice.index) + formula.slice(comma + 1, at - 1) + formula.slice(at));
}

/** A cell, or a word in its place where it is blank. */
const OR_A_WORD = /IF\((\$?[A-Z]+\$?\d+)="",("[^"]*"),\1\)/g;
const withWords = (formula: string, sheet: ExcelJS.Worksheet): string =>
  formula.replace(OR_A_WORD, (_, at: string, word: string) =>
    valueOf(sheet.getCell(at.replaceAll("$", ""))) === null ? word : at,
  );

function callsIn(book: ExcelJS.Workbook): Call[] {
  const calls: Call[] = [];
  book.eachSheet((sheet) =>
    sheet.eachRow((row) =>
      row.eachCell((cell) => {
        const formula = typeof cell.formula === "string" ? withWords(asEntered(cell.formula), sheet) : "";
        const match = formula.includes("INDEX(") ? null : CALL.exec(formula);
        const args = match === null ? null : argumentsIn(match[2]!);
        const isGuarded = formula.includes(`"${String(cell.result)}"`); // it shows the words of a guard
        if (match !== null && args !== null && !isGuarded)
          calls.push({ sheet: sheet.name, at: cell.address, name: match[1]!, args });
      }),
    ),
  );
  return calls;
}

/** Arguments that are places, names, numbers, texts or nothing; null where one of them computes. */
function argumentsIn(text: string): string[] | null {
  const args = [""];
  for (const { type, value } of tokenize(`=${text}`, { mergeRefs: true }).slice(1)) {
    if (value === ",") args.push("");
    else if (["range", "range_named", "number", "string"].includes(type) || value === "-")
      args[args.length - 1] += value;
    else return null;
  }
  return args;
}

function matrixOf(book: ExcelJS.Workbook, sheet: string, argument: string): unknown[][] | null {
  if (argument === "") return null;
  if (/^-?[\d.]+$/.test(argument)) return [[Number(argument)]];
  if (argument.startsWith('"')) return [[argument.slice(1, -1).replaceAll('""', '"')]];
  const named = book.definedNames.getRanges(argument).ranges[0];
  const range = readRange(named ?? argument, sheet)!;
  return placesIn(range).map((line) =>
    line.map(({ row, column }) => valueOf(book.getWorksheet(range.sheet)!.getCell(row, column))),
  );
}

/** What the function itself says to these arguments; the JSON of it is free of the bundle's own classes. */
function answer(book: ExcelJS.Workbook, { name, sheet, args }: Call): unknown[][] {
  const { id, parameters } = functions.find((one) => one.name === name)!;
  try {
    const result = call(id, ...parameters.map((_, index) => matrixOf(book, sheet, args[index] ?? "")));
    return Array.isArray(result) ? (result as unknown[][]) : [[result]];
  } catch (error) {
    if (error instanceof HostError) return [[{ error: error.code }]];
    throw error;
  }
}

describe.each(["IP", "SI"] as const)("the example in %s", (units) => {
  let book: ExcelJS.Workbook;
  beforeAll(async () => {
    const example = budgetBook({ units, sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });
    const described = { ...example, sheets: [...example.sheets, singleCellsSheet] };
    book = new ExcelJS.Workbook();
    await book.xlsx.load((await writeBook(calculate(described), { title: "x" })) as unknown as ExcelJS.Buffer);
  });

  test("every call of ours shows what the function gives, in every cell that it fills", () => {
    const calls = callsIn(book);
    expect(calls.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["BUDGET", "SOLVE", "SCENARIOS", "GAINS", "CLAIM", "AREA", "FRICTION", "ABOUT"]),
    );
    for (const one of calls) {
      const given = answer(book, one);
      const { column, row } = placeOf(one.at);
      const seen = given.map((line, down) =>
        line.map((_, across) => {
          const value = valueOf(book.getWorksheet(one.sheet)!.getCell(cellAddress(column + across, row + down)));
          return value ?? ""; // a text of no letters
        }),
      );
      expect([one, seen]).toEqual([one, JSON.parse(JSON.stringify(given))]);
    }
  });

  test("no cell of the example shows an error but the one that explains errors", () => {
    const wrong: string[] = [];
    book.eachSheet((sheet) =>
      sheet.eachRow((row) =>
        row.eachCell((cell) => errorOf(valueOf(cell)) !== undefined && wrong.push(`${sheet.name}!${cell.address}`)),
      ),
    );
    expect(wrong).toEqual(["Single cells!C13"]);
  });
});
