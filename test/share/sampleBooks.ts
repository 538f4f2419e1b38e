import { cellAddress, placeOf } from "../../src/sheets/address";
import type { Calculated, ShownError, Extent, ShownCell } from "../../src/sheets/calculated";
import type { CellName, CellValue, Sheet, SheetCell } from "../../src/sheets/workbook";
import type { EngineValues } from "../support/engine";

/** A formula with what it shows: rows of values that it fills from its own cell on. */
export interface Formula {
  readonly code: string;
  readonly shows: readonly (readonly (CellValue | ShownError)[])[];
}

export interface SampleSheet {
  readonly rows?: readonly (readonly CellValue[])[]; // typed values from A1 on
  readonly formulas?: Readonly<Record<string, Formula>>;
  readonly with?: Partial<Sheet>;
}

/** A book typed by hand, with what its cells show. */
export function sampleBook(sheets: Readonly<Record<string, SampleSheet>>, names: readonly CellName[] = []): Calculated {
  const shown = new Map<string, Map<string, ShownCell>>();
  const made = Object.entries(sheets).map(([name, { rows = [], formulas = {}, with: more = {} }]): Sheet => {
    const there = new Map<string, ShownCell>();
    shown.set(name, there);
    const cells: SheetCell[] = rows.flatMap((row, down) =>
      row.flatMap((value, across) => (value === null ? [] : [typedCell(cellAddress(across + 1, down + 1), value)])),
    );
    for (const cell of cells) there.set(cell.at, { value: "value" in cell ? cell.value : { error: "#DIV/0!" } });
    for (const [at, { code, shows }] of Object.entries(formulas)) {
      cells.push({ at, formula: code });
      fill(there, at, shows);
    }
    return {
      name,
      columns: [],
      tallRows: [],
      frozen: { rows: 0, columns: 0 },
      lists: [],
      flags: [],
      ...more,
      cells: [...cells, ...(more.cells ?? [])],
    };
  });
  return { workbook: { name: "Sample", sheets: made, names }, shown };
}

/** An error value is made where it stands. */
const typedCell = (at: string, value: CellValue): SheetCell =>
  typeof value === "object" && value !== null ? { at, formula: "=1/0" } : { at, value };

function fill(shown: Map<string, ShownCell>, at: string, values: Formula["shows"]): void {
  const { column, row } = placeOf(at);
  const fills: Extent = { rows: values.length, columns: values[0]!.length };
  values.forEach((line, down) =>
    line.forEach((value, across) => shown.set(cellAddress(column + across, row + down), { value })),
  );
  if (fills.rows + fills.columns > 2) shown.set(at, { ...shown.get(at)!, fills });
}

const CLOSE = 1e-6; // relative

/** Cells in which an engine shows something else than expected: blank and empty text are alike, and so are all errors. */
export function differences(sheet: string, at: string, expected: Formula["shows"], values: EngineValues): string[] {
  const { column, row } = placeOf(at);
  return expected.flatMap((line, down) =>
    line.flatMap((value, across) => {
      const address = cellAddress(column + across, row + down);
      const got = values.get(sheet)?.get(address) ?? "";
      return sameShown(value, got) ? [] : [`${sheet}!${address}: ${String(got)} instead of ${JSON.stringify(value)}`];
    }),
  );
}

export function sameShown(expected: CellValue | ShownError, got: string | number): boolean {
  if (expected === null) return got === "";
  if (typeof expected === "object") return String(got).startsWith("#");
  if (typeof expected !== "number") return String(expected).toUpperCase() === String(got).toUpperCase();
  return got !== "" && Math.abs(Number(got) - expected) <= CLOSE * Math.abs(expected);
}
