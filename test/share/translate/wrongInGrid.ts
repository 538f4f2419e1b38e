/** Calls of ours as plain formulas, computed in the grid of the local sheet, held against what the functions themselves answer. */
import type { UnitSystem } from "../../../src/reference/quantities";
import { cellAddress, placeOf } from "../../../src/sheets/address";
import type { CellValue } from "../../../src/sheets/workbook";
import type { EngineValues } from "../../support/engine";
import { inGrid } from "../../support/grid";
import { withFewEntries } from "./fewEntries";
import { ours } from "./ourFunctions";
import { type Given, plainBook } from "./plainBook";

const CLOSE = 1e-8; // relative; the nested friction factor is right to 2e-9
const NOTHING = 1e-12; // what a sum of numbers near 1 may leave where the answer is 0

export type Answer = string | number; // "refused" where the function answers with an error
export interface Expected {
  readonly sheet: string;
  readonly at: string;
  readonly call: string;
  readonly answer: Answer;
}

/** The cells that show something else than expected once the grid has computed the plain formulas. */
export function wrongIn(given: readonly Given[], expected: readonly Expected[], tables: UnitSystem = "SI"): string[] {
  const { workbook, translations } = plainBook(given, tables);
  expect([...translations].filter(([, { kind }]) => kind !== "cells")).toEqual([]);
  const values = inGrid(withFewEntries(workbook));
  const wrong = expected.flatMap(({ sheet, at, call, answer }) => {
    const value = values.get(sheet)?.get(at) ?? "";
    return isSame(answer, value) ? [] : [`${sheet}!${at} ${call}: ${String(value)} instead of ${answer}`];
  });
  return [...wrong, ...brokenIn(values)];
}

/** Cells that hold no formula that a spreadsheet can read, wherever they stand. */
const brokenIn = (values: EngineValues): string[] =>
  [...values].flatMap(([sheet, cells]) =>
    [...cells].flatMap(([at, value]) =>
      value === "#BAD_EXPR" || value === "#NAME?" ? [`${sheet}!${at} ${value}`] : [],
    ),
  );

const isSame = (answer: Answer, value: string | number): boolean => {
  if (answer === "refused") return value === "#N/A" || value === "#ERROR"; // a text times a factor is the latter
  if (typeof answer !== "number") return value === answer;
  return typeof value === "number" && Math.abs(value - answer) <= CLOSE * Math.abs(answer) + NOTHING;
};

/**
 * The cells in which calls show something else than the functions answer.
 * @param rows values from A1 on
 * @param calls without "=DUCT.", by what the functions answer: numbers or words, a refusal, or either
 */
export function wrongCalls(
  rows: readonly (readonly CellValue[])[],
  calls: {
    readonly answered?: readonly string[];
    readonly refused?: readonly string[];
    readonly mixed?: readonly string[];
    readonly worked?: readonly (readonly [call: string, asIf: string])[]; // with expressions in it, and with their values
  },
  tables: UnitSystem = "SI",
): string[] {
  const { answered = [], refused = [], mixed = [], worked = [] } = calls;
  const formulas: Record<string, string> = {};
  let next = 1;
  const asked = [...answered, ...refused, ...mixed].map((call) => [call, call] as const);
  const expected = [...asked, ...worked].flatMap(([call, asIf]): Expected[] => {
    const answer = answerOf(asIf, rows);
    if (answered.includes(call) || refused.includes(call))
      expect([call, answer === "refused"]).toEqual([call, refused.includes(call)]);
    const first = next;
    formulas[`H${first}`] = `=DUCT.${call}`;
    const cells = answer === "refused" ? [["refused"]] : answer;
    next += cells.length;
    return cells.flatMap((line, down) =>
      line.map((value, right) => ({
        sheet: "S",
        at: cellAddress(8 + right, first + down),
        call,
        answer: value,
      })),
    );
  });
  return wrongIn([{ name: "S", rows, formulas }], expected, tables);
}

/** What the cell of a call shows in a copy in which a cell was changed after it was made. */
export function afterChange(
  rows: readonly (readonly CellValue[])[],
  call: string,
  at: string,
  value: CellValue,
): string | number {
  const { workbook } = plainBook([{ name: "S", rows, formulas: { H1: `=DUCT.${call}` } }], "SI");
  const sheets = workbook.sheets.map((sheet) =>
    sheet.name !== "S"
      ? sheet
      : {
          ...sheet,
          cells: [...sheet.cells.filter((cell) => cell.at !== at), ...(value === null ? [] : [{ at, value }])],
        },
  );
  return inGrid(withFewEntries({ ...workbook, sheets }))
    .get("S")!
    .get("H1")!;
}

/** What the function answers to a call with numbers, texts, cells and ranges as its arguments. */
function answerOf(call: string, rows: readonly (readonly CellValue[])[]): Answer[][] | "refused" {
  const [, name, inside] = /^([A-Z]+)\((.*)\)$/.exec(call)!;
  const args = inside!.match(/(?<=^|,)("[^"]*"|[^",]*)(?=,|$)/g)!;
  return ours(
    name!,
    args.map((arg) => valuesOf(arg, rows)),
  );
}

function valuesOf(arg: string, rows: readonly (readonly CellValue[])[]): CellValue[][] | null {
  if (arg === "") return null;
  if (arg.startsWith('"')) return [[arg.slice(1, -1)]];
  if (!/^[A-Z]/.test(arg)) return [[Number(arg)]];
  const [from, to] = [arg.split(":")[0]!, arg.split(":").at(-1)!].map(placeOf);
  return Array.from({ length: to!.row - from!.row + 1 }, (_, down) =>
    Array.from(
      { length: to!.column - from!.column + 1 },
      (__, right) => rows[from!.row + down - 1]?.[from!.column + right - 1] ?? null,
    ),
  );
}
