/** BUDGET as plain formulas, computed in the grid of the local sheet, held against BUDGET itself. */
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { clubCopy } from "../../../src/share/clubCopy";
import { cellAddress } from "../../../src/sheets/address";
import type { CellValue, Workbook } from "../../../src/sheets/workbook";
import type { EngineValues } from "../../support/engine";
import { inGrid } from "../../support/grid";
import { differences, sampleBook, type SampleSheet } from "../sampleBooks";
import { withFewNames } from "../nearest/fewNames";
import { withFewEntries } from "../translate/fewEntries";

export const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

export type Table = readonly (readonly CellValue[])[];
export type Units = "IP" | "SI";

export const answerOf = (table: Table, units: Units, density?: number): CellValue[][] =>
  budget(table as never, density === undefined ? undefined : [[density]], [[units]]) as CellValue[][];

/** Whether BUDGET finds a row wrong, or lacks one: a copy then has no numbers at all. */
export const isRefused = (table: Table, units: Units): boolean =>
  answerOf(table, units).some((row) => row.some((cell: unknown) => cell instanceof CustomFunctions.Error));

/** A copy of a book with these tables, each with BUDGET on a sheet of its own. */
export const copyOf = (...args: Parameters<typeof copyWithAllNames>): Workbook =>
  withFewNames(copyWithAllNames(...args));

/** The same with all the names that may be offered for a wrong one. */
export function copyWithAllNames(
  tables: readonly Table[],
  units: Units,
  answers: readonly Table[],
  density?: number,
): Workbook {
  const sheets = tables.flatMap((table, index): [string, SampleSheet][] => {
    const range = `A1:${cellAddress(table[0]!.length, table.length)}`;
    const code = `=DUCT.BUDGET(Runs${index}!${range},${density ?? ""},"${units}")`;
    return [
      [`Runs${index}`, { rows: table }],
      [`Answer${index}`, { formulas: { A1: { code, shows: answers[index]! } } }],
    ];
  });
  const copy = clubCopy(sampleBook(Object.fromEntries(sheets)), ORDER);
  expect(copy.fixed).toEqual([]);
  return withFewEntries(copy.book.workbook);
}

/** What the grid computes for such a copy. */
export const copied = (...args: Parameters<typeof copyOf>): EngineValues => inGrid(copyOf(...args));

/** The cells of BUDGET's answer in which a copy shows something else. */
export function wrongIn(table: Table, units: Units, density?: number): string[] {
  const answer = answerOf(table, units, density);
  return differences("Answer0", "A1", answer, copied([table], units, [answer], density));
}
