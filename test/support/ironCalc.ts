import { spawnSync } from "node:child_process";
import path from "node:path";
import type { CellValue, Workbook } from "../../src/sheets/workbook";
import { placeOf } from "../../src/sheets/address";
import type { EngineValues } from "./engine";

/** What an independent spreadsheet engine computes for every cell of workbooks of plain formulas. */
export function ironCalc(...workbooks: readonly Workbook[]): EngineValues {
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.join(__dirname, "ironCalcProcess.mjs")], {
    input: JSON.stringify(workbooks.map(inputOf)),
    encoding: "utf8",
    maxBuffer: 1e9,
  });
  if (status !== 0) throw new Error(`the engine failed: ${stderr}`);
  const shown = JSON.parse(stdout) as string[][][];
  return new Map(
    workbooks.flatMap(({ sheets }, book) =>
      sheets.map(({ name, cells }, sheet) => {
        const values = cells.map(({ at }, index) => [at, asValue(shown[book]![sheet]![index]!)] as const);
        return [name, new Map(values)] as const;
      }),
    ),
  );
}

const inputOf = ({ sheets, names }: Workbook) => ({
  names: names.map(({ name, sheet, at }) => ({ name, formula: `'${sheet}'!${at.replace(/([A-Z]+)/, "$$$1$$")}` })),
  sheets: sheets.map(({ name, cells }) => ({
    name,
    cells: cells.map((cell) => ({ ...placeOf(cell.at), input: "formula" in cell ? cell.formula : typed(cell.value) })),
  })),
});

/** A value as a person types it: an apostrophe makes a text of whatever follows. */
const typed = (value: CellValue): string => (typeof value === "string" ? `'${value}` : String(value ?? ""));

/** A shown text as a number where it is one in the format that was asked for. */
const asValue = (text: string): number | string => (/^-?\d\.\d+E[+-]\d+$/.test(text) ? Number(text) : text);
