import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { writeXlsx } from "hucre/xlsx";
import { cellAddress, placeOf } from "../../src/sheets/address";
import { toStored } from "../../src/hosts/file/storedFormula";
import type { Workbook } from "../../src/sheets/workbook";
import type { EngineValues } from "./engine";
import { soffice } from "./soffice";

/** LibreOffice's setting that makes it compute every formula of a workbook when it opens it, whatever the file says. */
const SETTINGS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
<item oor:path="/org.openoffice.Office.Common/Misc"><prop oor:name="FirstRun" oor:op="fuse"><value>false</value></prop></item>
</oor:items>`;

/** Comma, double quotes, UTF-8, from row 1, quotes where needed, values in full instead of as shown, every sheet to its own file. */
const CSV = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

/** What LibreOffice computes for every cell of a workbook of plain formulas. */
export async function hardRecalculation(workbook: Workbook): Promise<EngineValues> {
  const folder = mkdtempSync(path.join(os.tmpdir(), "recalculated-"));
  try {
    const user = path.join(folder, "profile", "user");
    mkdirSync(user, { recursive: true });
    writeFileSync(path.join(user, "registrymodifications.xcu"), SETTINGS);
    const file = path.join(folder, "book.xlsx");
    writeFileSync(file, await bytesOf(workbook));
    soffice(folder, "--convert-to", CSV, "--outdir", folder, file);
    const files = readdirSync(folder);
    return new Map(
      workbook.sheets.map(({ name }) => {
        const written = files.find((one) => one === `book-${name}.csv`);
        if (written === undefined) throw new Error(`soffice wrote no sheet ${name}, only ${files.join(", ")}`);
        return [name, valuesOf(readFileSync(path.join(folder, written), "utf8"))];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function bytesOf({ sheets, names }: Workbook): Promise<Uint8Array> {
  return writeXlsx({
    sheets: sheets.map(({ name, cells }) => ({
      name,
      rows: [],
      cells: new Map(
        cells.map((cell) => {
          const { column, row } = placeOf(cell.at);
          const content = "formula" in cell ? { formula: toStored(cell.formula) } : { value: cell.value };
          return [`${row - 1},${column - 1}`, content];
        }),
      ),
    })),
    namedRanges: names.map(({ name, sheet, at }) => ({
      name,
      range: `'${sheet}'!${at.replace(/([A-Z]+)(\d+)/, "$$$1$$$2")}`,
    })),
  });
}

function valuesOf(csv: string): ReadonlyMap<string, number | string> {
  const values = new Map<string, number | string>();
  let [row, column] = [1, 1];
  for (const [, quoted, bare, end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^,\n]*))(,|\n|$)/g)) {
    const text = quoted?.replaceAll('""', '"') ?? bare ?? "";
    if (text !== "") values.set(cellAddress(column, row), isNumber(text) ? Number(text) : text);
    if (end === ",") column++;
    else [row, column] = [row + 1, 1];
  }
  return values;
}

/** With values in full LibreOffice puts numbers of formulas in quotes as well. */
const isNumber = (text: string): boolean => /^-?\d+(\.\d+)?(E[+-]?\d+)?$/i.test(text);
