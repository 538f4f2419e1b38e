/** Copies of books with tables of facts, and what CLAIM itself answers to each. */
import "../../support/customFunctions";
import { claim } from "../../../src/functions/claims/claim";
import { claimColumns } from "../../../src/reference/answerColumns";
import { clubCopy } from "../../../src/share/clubCopy";
import type { ShownError } from "../../../src/sheets/calculated";
import type { CellValue, Workbook } from "../../../src/sheets/workbook";
import type { EngineValues } from "../../support/engine";
import { sampleBook, type SampleSheet } from "../sampleBooks";
import { cellAddress } from "../../../src/sheets/address";

type SampleShows = readonly (readonly Cell[])[];

export type Units = "IP" | "SI";
export type Cell = CellValue | ShownError;
export type Facts = readonly (readonly [name: Cell, value: Cell])[];

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

/** What stands in a cell as a host hands it to the function. */
const handed = (cell: Cell): unknown =>
  typeof cell === "object" && cell !== null ? { type: "Error", basicValue: cell.error } : cell;

/** The answer, one error where the call is refused. */
export function answerOf(facts: Facts, units: Units): CellValue[][] | "refused" {
  try {
    return claim(
      facts.map((row) => row.map(handed)),
      [[units]],
    ) as CellValue[][];
  } catch (error) {
    if (error instanceof CustomFunctions.Error) return "refused";
    throw error;
  }
}

/** A copy of a book in which each of these tables has CLAIM's answer beside it, on a sheet of its own. */
export function copyOf(tables: readonly Facts[], units: Units): Workbook {
  const sheets = tables.map((facts, index): [string, SampleSheet] => {
    const answer = answerOf(facts, units);
    const code = `=DUCT.CLAIM(A1:B${facts.length},"${units}")`;
    const shows: SampleShows = answer === "refused" ? [[{ error: "#VALUE!" }]] : answer;
    return [`S${index}`, { rows: facts as never, formulas: { D1: { code, shows } } }];
  });
  const copy = clubCopy(sampleBook(Object.fromEntries(sheets)), ORDER);
  expect([...copy.fixed, ...copy.untranslated]).toEqual([]);
  return copy.book.workbook;
}

/** The cells of the answers in which an engine shows something else, letter by letter; blank rows below an answer too. */
export function wrongIn(tables: readonly Facts[], units: Units, values: EngineValues): string[] {
  return tables.flatMap((facts, index) => {
    const answer = answerOf(facts, units);
    const shown = answer === "refused" ? [["#N/A"]] : answer;
    const rows = Array.from({ length: facts.length + 2 }, (_, down) =>
      claimColumns.map((__, across) => shown[down]?.[across] ?? ""),
    );
    const wrong = rows.flatMap((row, down) =>
      row.flatMap((expected, across) => {
        const got = values.get(`S${index}`)?.get(cellAddress(4 + across, 1 + down)) ?? "";
        return isSame(expected, got)
          ? []
          : [`${cellAddress(4 + across, 1 + down)} ${got} instead of ${String(expected)}`];
      }),
    );
    return wrong.length === 0 ? [] : [`${JSON.stringify(facts)}\n${wrong.join("\n")}`];
  });
}

const CLOSE = 1e-9; // relative

/** A copy quotes what it was handed with each hard blank as a blank, which looks the same. */
const withPlainBlanks = (text: string): string => text.replaceAll("\u00a0", " ");

/** A text of digits comes out of a file of commas as its number. */
const isSame = (expected: CellValue, got: string | number): boolean =>
  typeof expected === "number"
    ? typeof got === "number" && Math.abs(got - expected) <= CLOSE * Math.abs(expected)
    : withPlainBlanks(String(expected)) === withPlainBlanks(String(got)) ||
      (typeof got === "number" && expected !== "" && Number(expected) === got);
