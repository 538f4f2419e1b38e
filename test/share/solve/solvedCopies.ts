/** Copies of books in which SOLVE reads a table of runs, a curve and the open gates, and what SOLVE itself answers. */
import "../../support/customFunctions";
import { solve } from "../../../src/functions/systems/solve";
import { clubCopy } from "../../../src/share/clubCopy";
import type { ClubCopy } from "../../../src/share/copy";
import { cellAddress } from "../../../src/sheets/address";
import type { CellValue, Workbook } from "../../../src/sheets/workbook";
import { seededTable } from "../budget/seededTable";
import { sampleBook, type SampleSheet } from "../sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

type Table = readonly (readonly CellValue[])[];

/** A network as it stands in cells. */
export interface Asked {
  readonly runs: Table;
  readonly curve: Table;
  readonly open?: CellValue;
  readonly units: "IP" | "SI";
}

/** What SOLVE answers; a refusal is the one error cell that it shows. */
export const answerOf = ({ runs, curve, open, units }: Asked): CellValue[][] => {
  const given = open === undefined ? undefined : [[open]];
  return solve(runs as never, curve as never, given, undefined, [[units]]) as CellValue[][];
};

/** A copy of a book with a table, a curve and SOLVE for each; `shows` is what stood there when the copy was made. */
export function copyOf(asked: readonly Asked[], shows: readonly Table[]): ClubCopy {
  const sheets = asked.flatMap(({ runs, curve, open, units }, index): [string, SampleSheet][] => {
    const range = `Runs${index}!A1:${cellAddress(runs[0]!.length, runs.length)}`;
    const fan = `Fan${index}!A1:${cellAddress(2, curve.length)}`;
    const gates = open === undefined ? "" : `Fan${index}!D1`;
    const code = `=DUCT.SOLVE(${range},${fan},${gates},,"${units}")`;
    return [
      [`Runs${index}`, { rows: runs }],
      [`Fan${index}`, { rows: curve.map((row, at) => (at === 0 ? [...row, null, open ?? null] : row)) }],
      [`Answer${index}`, { formulas: { A1: { code, shows: shows[index]! } } }],
    ];
  });
  return clubCopy(sampleBook(Object.fromEntries(sheets)), ORDER);
}

/** An invented fan with a curve that falls, in both units. */
export const fans = {
  IP: [
    ["Airflow", "Pressure"],
    [0, 10],
    [600, 9],
    [1200, 6.5],
    [1800, 1],
    [2400, 0],
    [null, null],
  ],
  SI: [
    [0, 2500],
    [1000, 2200],
    [2000, 1600],
    [3000, 300],
    [4000, 0],
  ],
} as const;

/** Systems drawn by lot: trees with leaks, shut gates and mitres, on the fan above. */
export const seededSystems = (seeds: readonly number[], fewest: number): Asked[] =>
  seeds.map((seed) => {
    const units = seed % 2 === 0 ? "SI" : "IP";
    const runs = seededTable(seed, fewest + (seed % 5), units);
    const fittings = runs[0]!.indexOf("Fittings");
    const withMitres = runs.map((row, at) =>
      at % 3 === 1 && row[0] !== null ? row.map((cell, place) => (place === fittings ? "mitre 90; 0.2" : cell)) : row,
    );
    return { runs: withMitres, curve: fans[units], units };
  });

/** The workbook with a value typed into a cell. */
export const typed = (workbook: Workbook, sheet: string, at: string, value: CellValue): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((one) =>
    one.name === sheet ? { ...one, cells: [...one.cells.filter((cell) => cell.at !== at), { at, value }] } : one,
  ),
});
