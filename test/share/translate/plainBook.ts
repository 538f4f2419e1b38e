import { sheetOf } from "../../support/sheetOf";
import { cellAddress } from "../../../src/sheets/address";
import type { Calculated, ShownCell } from "../../../src/sheets/calculated";
import { formula } from "../../../src/sheets/cells";
import type { UnitSystem } from "../../../src/reference/quantities";
import type { CellValue, SheetCell, Workbook } from "../../../src/sheets/workbook";
import { copyTables } from "../../../src/share/translate/lookupTables";
import { shownReader } from "../../../src/share/translate/shownReader";
import { type FormulaTranslation, translateFormula } from "../../../src/share/translate/translateFormula";
import { usedEntries } from "../../../src/share/translate/usedEntries";
import { newWorkings } from "../../../src/share/translate/workings";

/** A sheet of values, by rows from 1, and the formulas of ours on it. */
export interface Given {
  readonly name: string;
  readonly rows: readonly (readonly CellValue[])[];
  readonly formulas: Readonly<Record<string, string>>; // by address
}

export interface PlainBook {
  readonly workbook: Workbook;
  readonly translations: ReadonlyMap<string, FormulaTranslation>; // by "sheet!address"
}

/** The sheets with plain formulas in place of ours, and the sheets that they lean on. */
export function plainBook(given: readonly Given[], units: UnitSystem): PlainBook {
  const values = given.map(({ name, rows }) => sheetOf(name, valueCells(rows)));
  const calculated: Calculated = {
    workbook: { name: "given", sheets: values, names: [] },
    shown: new Map(
      given.map(({ name, rows }) => [name, new Map(valueCells(rows).map((cell) => [cell.at, shownOf(cell)]))]),
    ),
  };
  const { sheet: lookups, tables } = copyTables(units, usedEntries(calculated));
  const workings = newWorkings();
  const shown = shownReader(calculated);
  const translations = new Map<string, FormulaTranslation>();
  const sheets = given.map(({ name, formulas }, index) => {
    const cells = Object.entries(formulas).flatMap(([at, code]) => {
      const context = { sheet: name, at, extent: { rows: 1, columns: 1 }, tables, workings, shown };
      const translation = translateFormula(code, context);
      translations.set(`${name}!${at}`, translation);
      return translation.kind === "cells" ? spread(at, translation.formulas) : [];
    });
    return sheetOf(name, [...values[index]!.cells, ...cells]);
  });
  return { workbook: { name: "plain", sheets: [...sheets, lookups, workings.sheet], names: [] }, translations };
}

function spread(at: string, formulas: readonly (readonly string[])[]): SheetCell[] {
  const [, letters, digits] = /^([A-Z])(\d+)$/.exec(at)!;
  const [column, row] = [letters!.charCodeAt(0) - 64, Number(digits)];
  return formulas.flatMap((line, down) =>
    line.map((code, right) => formula(cellAddress(column + right, row + down), code)),
  );
}

const valueCells = (rows: readonly (readonly CellValue[])[]) =>
  rows.flatMap((line, row) =>
    line.flatMap((value, column) => (value === null ? [] : [{ at: cellAddress(column + 1, row + 1), value }])),
  );

const shownOf = ({ value }: { readonly value: CellValue }): ShownCell => ({ value });
