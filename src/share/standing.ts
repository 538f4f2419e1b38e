import { cellAddress, fixedAddress, placeOf } from "../sheets/address";
import { readRange } from "../sheets/rangeRef";
import { sheetPrefix } from "../sheets/sheetPrefix";
import type { Sheet, SheetCell } from "../sheets/workbook";
import { isPlain } from "./isPlain";
import type { TranslatedSheets } from "./translateSheets";
import type { Workings } from "./translate/workings";

/**
 * Formulas that read an answer ask whether its formula still stands, since values pasted over it look like it. In a copy a formula
 * stands in each cell of the answer, and all of them must; a fixed answer is values on purpose.
 */
export function withStanding(
  sheets: readonly Sheet[],
  { live, fixed, untranslated }: TranslatedSheets,
  workings: Workings,
): Sheet[] {
  const kept = new Set([...fixed, ...untranslated].map(({ sheet, at }) => `${sheet}!${at}`));
  const said = (asked: string, reference: string, from: string): string => {
    const range = readRange(reference, from);
    if (range === null) return asked;
    const at = cellAddress(range.left, range.top);
    if (kept.has(`${range.sheet}!${at}`)) return `OR(${asked},1)`;
    const answer = live.find((one) => one.sheet === range.sheet && one.at === at);
    return answer === undefined ? asked : `AND(${asked},${allStand(answer, workings)})`;
  };
  return sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell): SheetCell =>
      "formula" in cell && cell.formula.includes("ISFORMULA(")
        ? { ...cell, formula: cell.formula.replace(ASKED, (asked, at: string) => said(asked, at, sheet.name)) }
        : cell,
    ),
  }));
}

/** A formula as the book has it. */
export const withoutStanding = (formula: string): string => formula.replace(SAID, "$1");

/** A formula without such questions: what a cell holds does not answer them. */
export const withoutAsking = (formula: string): string => formula.replace(ASKED, "TRUE");

const NO_BRACKET = "(?:'(?:[^']|'')*'|[^'()])*";
const ASKED = new RegExp(`ISFORMULA\\((${NO_BRACKET})\\)`, "g");
const SAID = new RegExp(`\\b(?:AND|OR)\\((ISFORMULA\\(${NO_BRACKET}\\)),${NO_BRACKET}\\)`, "g");

/**
 * The cell that says whether all formulas of an answer stand: row by row below it, since not every program asks of a range. A row that is
 * deleted is told elsewhere. In some programs rows that somebody sorts take their formulas along, and what stands beside them by its row
 * would then go with another run: so each row begins with its own.
 */
function allStand({ sheet, at, cells }: TranslatedSheets["live"][number], workings: Workings): string {
  const { column, row } = placeOf(at);
  const stands = (across: number, down: number): string =>
    `ISFORMULA(${sheetPrefix(sheet)}${fixedAddress(column + across, row + down)})`;
  const ofRow = (line: readonly string[], down: number): string[] => [
    ...line.flatMap((code, across) => (isPlain(code) ? [] : [stands(across, down)])),
    ...inItsRow(`${sheetPrefix(sheet)}${fixedAddress(column, row + down)}`, line[0] ?? "", workings),
  ];
  const rows = cells.map(ofRow).filter((all) => all.length > 0);
  const { sheet: name, top } = workings.once(`stands ${sheet}!${at}`, () =>
    workings.place(rows.length + 1, 1, ({ left, top: first, bottom }) => [
      [`AND(${fixedAddress(left, first + 1)}:${fixedAddress(left, bottom)})`],
      ...rows.map((all) => [`IFERROR(AND(${all.join(",")}),TRUE)`]),
    ]),
  );
  return `${sheetPrefix(name)}${fixedAddress(1, top)}`;
}

/** That a cell shows the step of the workings that its formula hands on, or nothing; none where the formula is more than that. */
function inItsRow(cell: string, code: string, workings: Workings): string[] {
  const [, prefix, step] = /^=(?:IF\([^"]*,"",)?('[^']+'!|\w+!)(\$?[A-Z]+\$?\d+)\)?$/.exec(code) ?? [];
  return step === undefined || prefix !== sheetPrefix(workings.sheet.name)
    ? []
    : [`OR(${cell}="",${cell}=${prefix}${step})`];
}
