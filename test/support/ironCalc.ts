import { spawnSync } from "node:child_process";
import path from "node:path";
import type { Workbook } from "../../src/sheets/workbook";
import { placeOf } from "../../src/sheets/address";
import type { EngineValues } from "./engine";

/** What an independent spreadsheet engine computes for every cell of a workbook of plain formulas. */
export function ironCalc({ sheets, names }: Workbook): EngineValues {
  const book = {
    names: names.map(({ name, sheet, at }) => ({ name, formula: `'${sheet}'!${at.replace(/([A-Z]+)/, "$$$1$$")}` })),
    sheets: sheets.map(({ name, cells }) => ({
      name,
      cells: cells.map((cell) => ({
        ...placeOf(cell.at),
        input:
          "formula" in cell
            ? cell.formula
            : typeof cell.value === "string"
              ? `'${cell.value}`
              : String(cell.value ?? ""),
      })),
    })),
  };
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.join(__dirname, "ironCalcProcess.mjs")], {
    input: JSON.stringify(book),
    encoding: "utf8",
    maxBuffer: 1e9,
  });
  if (status !== 0) throw new Error(`the engine failed: ${stderr}`);
  const shown = JSON.parse(stdout) as string[][];
  return new Map(
    sheets.map(({ name, cells }, sheet) => [
      name,
      new Map(cells.map(({ at }, index) => [at, asValue(shown[sheet]![index]!)])),
    ]),
  );
}

/** A shown text as a number where it is one in the format that was asked for. */
const asValue = (text: string): number | string => (/^-?\d\.\d+E[+-]\d+$/.test(text) ? Number(text) : text);
