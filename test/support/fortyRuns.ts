import { cellAddress } from "../../src/sheets/address";
import { budgetBook } from "../../src/sheets/book/budgetBook";
import type { ShownRunColumn } from "../../src/reference/runColumns";
import { CURVE_HEADER, runCell, RUNS_FIRST } from "../../src/sheets/book/layout";
import { SETS } from "../../src/sheets/book/flow/flowLayout";
import type { CellValue, Workbook } from "../../src/sheets/workbook";
import { sheetKeys } from "../../src/sheets/sheetKeys";

/** Every row of the runs table taken: this many hoods, each with hose, a gate and a leak, on one main. */
export const HOODS = 39;

type Filled = ReadonlyMap<string, CellValue>; // by address

const runs = (): Filled => {
  const rows: Partial<Record<ShownRunColumn, string | number>>[] = Array.from({ length: HOODS }, (_, index) => ({
    Run: `machine ${index + 1}`,
    To: "main",
    Airflow: 250,
    Diameter: 5,
    Length: 10 + index,
    Flex: 3,
    Hood: "flanged end",
    Fittings: "branch 30",
    Gate: "open",
    "Leak open": 0.2,
    "Leak shut": 0.2,
  }));
  const all = [...rows, { Run: "main", To: "fan", Diameter: 12, Length: 20 }];
  return new Map(
    all.flatMap((row, index) =>
      Object.entries(row).map(
        ([column, value]) => [runCell(column as ShownRunColumn, RUNS_FIRST + index), value] as const,
      ),
    ),
  );
};

const CURVE = [
  [0, 20],
  [5000, 16],
  [10_000, 8],
  [13_000, 0],
] as const;

const filled: Readonly<Record<string, Filled>> = {
  Runs: runs(),
  Fan: new Map(
    CURVE.flatMap(([airflow, pressure], index) => [
      [cellAddress(1, CURVE_HEADER + 1 + index), airflow] as const,
      [cellAddress(2, CURVE_HEADER + 1 + index), pressure] as const,
    ]),
  ),
  Flow: new Map([
    [`C${SETS}`, "machine 1"],
    [`B${SETS + 1}`, "one"],
    [`C${SETS + 1}`, "open"],
  ]),
};

/** An empty budget's sheets, their runs table filled to its last row, a fan's curve and one scenario. */
export function fortyRuns(): Workbook {
  const book = budgetBook({ units: "IP", sheets: sheetKeys, contents: "empty" }, { sheets: [], names: [] });
  return {
    ...book,
    sheets: book.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => {
        const value = filled[sheet.name]?.get(cell.at);
        return value === undefined || "formula" in cell ? cell : { ...cell, value };
      }),
    })),
  };
}
