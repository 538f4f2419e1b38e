/** Tables of runs with wrong rows, drawn by lot, and where a copy says something else of them than BUDGET. */
import "../../support/customFunctions";
import { allColumns, columnsForGainsAlone } from "../../../src/reference/columnsOfRuns";
import { cellAddress } from "../../../src/sheets/address";
import type { CellValue } from "../../../src/sheets/workbook";
import type { EngineValues } from "../../support/engine";
import { lots } from "../../support/lots";
import { sameShown } from "../sampleBooks";
import { seededTable } from "./seededTable";

type Table = readonly (readonly CellValue[])[];

/** As BUDGET gets an error value of a cell. */
export const AN_ERROR = new CustomFunctions.Error(CustomFunctions.ErrorCode.divisionByZero) as unknown as CellValue;

/** What people leave wrong in a row. */
const MISTAKES: readonly (readonly [column: string, value: CellValue])[] = [
  ["Length", "long"],
  ["Diameter", null],
  ["Hood", "plian end"],
  ["Fittings", "brunch 45"],
  ["Fittings", "branch 45; elbwo"],
  ["To", "nowhere"],
  ["To", null],
  ["To", "tip"],
  ["To", "fan"],
  ["Run", null],
  ["Run", "run 1"],
  ["Side", "up"],
  ["Gate", "ajar"],
  ["Dust", "cheese"],
  ["Leak", "much"],
];
const ERRORS = allColumns
  .filter((column) => !columnsForGainsAlone.includes(column))
  .map((column) => [column, AN_ERROR] as const);

/** A sound table by lot with one or two of them. */
export function wrongTable(seed: number): Table {
  const lot = lots(7000 + seed);
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(lot() * items.length)]!;
  const table = seededTable(seed, 4 + (seed % 5), seed % 2 === 0 ? "SI" : "IP");
  for (let count = pick([1, 1, 2]); count > 0; count--) {
    const row = 1 + Math.floor(lot() * (table.length - 1));
    if (table[row]![0] === null) continue; // the blank row
    const [column, value] = pick(seed % 3 === 0 ? ERRORS : MISTAKES);
    table[row]![table[0]!.indexOf(column)] = value;
  }
  if (seed % 5 === 1) closeLoop(table);
  return table;
}

/** The run that another joins is made to join that one. */
function closeLoop(table: CellValue[][]): void {
  const [run, to] = [table[0]!.indexOf("Run"), table[0]!.indexOf("To")];
  const named = (name: CellValue): CellValue[] | undefined =>
    table.slice(1).find((row) => String(row[run]).toLowerCase() === String(name).toLowerCase());
  const joining = table.slice(1).find((row) => row[to] !== null && named(row[to]!) !== undefined);
  if (joining !== undefined) named(joining[to]!)![to] = joining[run]!;
}

const NOTE = 12;

/** Where a copy cannot tell which name is nearest, it tells none. */
const withoutNearest = (note: string): string => note.replace(/ \(nearest: .*\)$/, "");

/** Where a copy says something else: a wrong row is told in words of its own. */
export function wrongIn(answer: readonly (readonly unknown[])[], sheet: string, values: EngineValues): string[] {
  return answer.flatMap((row, down) =>
    row.flatMap((value, across) => {
      const at = cellAddress(across + 1, down + 1);
      const got = values.get(sheet)?.get(at) ?? "";
      const isError = value instanceof CustomFunctions.Error;
      const isWrongRow = row.some(
        (cell) => cell instanceof CustomFunctions.Error && cell.code === CustomFunctions.ErrorCode.invalidValue,
      );
      const same = isError
        ? String(got).startsWith("#") &&
          (String(got) === "#N/A") === (value.code === CustomFunctions.ErrorCode.notAvailable)
        : across === NOTE
          ? isWrongRow
            ? got !== ""
            : sameShown(String(value), got) || sameShown(withoutNearest(String(value)), got)
          : sameShown(value as CellValue, got);
      return same ? [] : [`${sheet}!${at}: ${String(got)} instead of ${isError ? String(value.code) : String(value)}`];
    }),
  );
}
