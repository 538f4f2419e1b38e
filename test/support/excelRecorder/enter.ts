import { cellAddress, placeOf } from "../../../src/sheets/address";
import { addressesIn, cellAt, cellToChange, isFilled, sheetNamed } from "./places";
import { misuse, Refusal } from "./refuse";
import type { Area, BookState, CellState, SheetState } from "./state";

/** What Excel answers for a formula: one value, or rows of values that fill further cells. */
export type Calculate = (formula: string, sheet: string, at: string) => unknown;

/**
 * Writes rows of values or formulas, which Excel reads alike: as if each were typed. Over rows that a filter hides it has been seen to
 * write the first row into every row that is shown, and nothing into the others (office-js issue 224, xlwings issue 747); row by row it writes
 * what it is told (NetOffice issue 2).
 */
export function enter(book: BookState, area: Area, rows: unknown, calculate: Calculate): void {
  const addresses = addressesIn(area);
  if (!Array.isArray(rows) || rows.length !== area.rows || rows.some((row) => row?.length !== area.columns)) {
    throw misuse(`the number of rows or columns differs from that of the range (${area.rows} by ${area.columns})`);
  }
  const isHidden = (down: number): boolean => area.sheet.filteredRows.has(area.row + down);
  const isCutUp = addresses.length > 1 && addresses.some((_, down) => isHidden(down));
  addresses.forEach((line, down) =>
    line.forEach((at, right) => {
      if (isCutUp && isHidden(down)) return;
      enterOne(book, area.sheet, at, (rows as unknown[][])[isCutUp ? 0 : down]![right], calculate);
    }),
  );
}

function enterOne(book: BookState, sheet: SheetState, at: string, input: unknown, calculate: Calculate): void {
  if (input === null || sheet.deaf.has(at)) return;
  if (!isContent(input)) throw misuse(`${at} cannot hold ${JSON.stringify(input)}`);
  const cell = cellToChange(sheet, at);
  clearAnswer(sheet, at, cell);
  if (typeof input === "string" && /^[=+-]/.test(input) && cell.format !== "@")
    return enterFormula(book, sheet, at, input, calculate);
  cell.value = asTyped(input, cell.format);
}

const isContent = (input: unknown): input is CellState["value"] =>
  ["string", "number", "boolean"].includes(typeof input) && !Number.isNaN(input);

/** A cell that a formula fills keeps its value until that formula is entered anew; then it would be in the way. */
function clearAnswer(sheet: SheetState, at: string, cell: CellState): void {
  for (const other of cell.formula === null ? [] : sheet.cells.values()) {
    if (other.anchor === at) Object.assign(other, { anchor: null, value: "", isError: false });
  }
  Object.assign(cell, { formula: null, value: "", isError: false, anchor: null });
}

function asTyped(input: string | number | boolean, format: string): CellState["value"] {
  if (format === "@") return String(input); // a cell formatted as text holds texts
  if (typeof input !== "string") return input;
  if (input.startsWith("'")) return input.slice(1);
  if (/^(true|false)$/i.test(input.trim())) return input.trim().toLowerCase() === "true";
  if (input.trim() !== "" && /^[\s$]*[\d.,]+\s*%?\s*$/.test(input)) return Number.parseFloat(input.replaceAll(",", ""));
  if (/^\s*\d{1,4}[-/]\d{1,2}([-/]\d{1,4})?\s*$|^\s*[A-Za-z]{3,9} \d{1,4}\s*$|^\s*\d{1,2}:\d{2}/.test(input))
    return 45_000; // a date
  return input;
}

function enterFormula(book: BookState, sheet: SheetState, at: string, input: string, calculate: Calculate): void {
  const formula = input.startsWith("=") ? input : `=${input}`;
  checkFormula(book, formula);
  const cell = cellToChange(sheet, at);
  cell.formula = formula;
  const answer = calculate(formula, sheet.name, at);
  if (Array.isArray(answer)) return spill(sheet, at, cell, answer as unknown[][]);
  show(cell, answer);
}

function spill(sheet: SheetState, at: string, cell: CellState, rows: unknown[][]): void {
  const { column, row } = placeOf(at);
  const cells = rows.flatMap((line, down) =>
    line.map((value, right) => ({ at: cellAddress(column + right, row + down), value })),
  );
  const others = cells.slice(1);
  const inTheWay = ({ at: other }: { at: string }): boolean => isFilled(cellAt(sheet, other));
  if (others.some(inTheWay)) return show(cell, "#SPILL!");
  show(cell, cells[0]!.value);
  for (const other of others) {
    const filled = cellToChange(sheet, other.at);
    filled.anchor = at;
    show(filled, other.value);
  }
}

function show(cell: CellState, value: unknown): void {
  cell.value = value as CellState["value"];
  cell.isError =
    typeof value === "string" &&
    /^#(VALUE!|N\/A|NAME\?|NUM!|DIV\/0!|REF!|NULL!|SPILL!|BUSY!|CALC!|CONNECT!)$/.test(value);
}

/** Excel refuses a formula that does not close, and asks for a file where it speaks of a sheet that is not there. */
function checkFormula(book: BookState, formula: string): void {
  if (formula.length > 8192) throw new Refusal("InvalidArgument", "the formula is too long");
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
  const depth = [...bare].reduce((sum, sign) => sum + (sign === "(" ? 1 : sign === ")" ? -1 : 0), 0);
  if (depth !== 0 || /^=\s*$/.test(bare) || bare.includes(";"))
    throw new Refusal("InvalidArgument", `no formula: ${formula}`);
  for (const [, inQuotes, plain] of bare.matchAll(/(?:'((?:[^']|'')+)'|([A-Za-z_][\w.]*))!/g)) {
    const name = plain ?? inQuotes!.replaceAll("''", "'");
    if (sheetNamed(book, name) === null) throw new Refusal("InvalidArgument", `no sheet ${name} for ${formula}`);
  }
}
