import { writeBook } from "../../src/hosts/file/writeBook";
import type { UnitSystem } from "../../src/reference/quantities";
import { TABLES_DATE } from "../../src/reference";
import { clubCopy } from "../../src/share/clubCopy";
import { budgetBook } from "../../src/sheets/book/budgetBook";
import type { Calculated } from "../../src/sheets/calculated";
import { calculate } from "../calculate";
import { version } from "../../package.json";
import { sheetKeys } from "../../src/sheets/sheetKeys";

export interface Sample {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const NOTHING_TAKEN = { sheets: [], names: [] };

/** The workbooks that a package carries: an empty one and an invented example in each unit system, and a club copy. */
export async function samples(): Promise<readonly Sample[]> {
  const units: readonly UnitSystem[] = ["IP", "SI"];
  const made: Sample[] = [];
  for (const system of units) {
    for (const contents of ["empty", "example"] as const) {
      const book = calculate(budgetBook({ units: system, sheets: sheetKeys, contents }, NOTHING_TAKEN));
      made.push(await sample(`budget-${system}-${contents}.xlsx`, book));
      if (contents === "example") made.push(await club(`club-copy-${system}.xlsx`, book));
    }
  }
  return made;
}

const sample = async (name: string, book: Calculated): Promise<Sample> => ({
  name,
  bytes: await writeBook(book, { title: book.workbook.name }),
});

/** The copy is dated like the tables, so that two packages of one version are the same bytes. */
async function club(name: string, book: Calculated): Promise<Sample> {
  const copy = clubCopy(book, { kind: "formulas", date: TABLES_DATE, version }).book;
  return { name, bytes: await writeBook(copy, { title: book.workbook.name, recalculate: true }) }; // as Share writes one
}
