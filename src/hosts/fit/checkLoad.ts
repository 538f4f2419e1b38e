import { cellsIn, readRectangle } from "../../sheets/rectangle";
import type { Sheet, SheetCell, Workbook } from "../../sheets/workbook";
import { FileRefusal } from "../file/fileRefusal";
import { formOf, formulaWork } from "./formulaWork";
import type { Reach } from "./strays";
import { itemAt } from "../../reference/itemAt";

/** Far more than any budget has, and what the sheet in the browser still holds in seconds. */
const MOST = {
  sheets: 200,
  filledCells: 250_000,
  formulas: 50_000,
  characters: 2e7, // of all texts and formulas together
  names: 2000,
  rules: 5000, // lists, flags, hints, tables and charts
  choices: 100_000, // of all lists together
  ruledCells: 5e6, // of all of these together, as far as their sheets reach
  area: 4e6, // cells of all sheets, blank ones counted
  deepest: 250, // brackets in brackets; Excel takes 64 functions in one another
  steps: 2e6, // of reading all formulas
};
const LONGEST_TEXT = 32_767; // characters that a cell holds, in Excel as well

const refuse = (what: string): never => {
  throw new FileRefusal(`This file has ${what} than a sheet can hold here, so it is not opened.`);
};

/**
 * Refuses a workbook that would keep whoever opens it busy for minutes.
 *
 * @param reaches how far its sheets reach, in their order
 */
export function checkLoad({ sheets, names }: Workbook, reaches: readonly Reach[]): void {
  if (sheets.length > MOST.sheets) refuse(`${sheets.length} sheets, more`);
  if (names.length > MOST.names) refuse(`${names.length} names of cells, more`);
  if (reaches.reduce((sum, { rows, columns }) => sum + rows * columns, 0) > MOST.area)
    refuse("sheets that reach farther");
  checkCells(sheets);
  checkFormulas(sheets);
  checkRules(sheets, reaches);
}

function checkCells(sheets: readonly Sheet[]): void {
  let [filled, formulas, characters] = [0, 0, 0];
  for (const sheet of sheets)
    for (const cell of sheet.cells) {
      const length = lengthOf(cell) + (cell.note?.length ?? 0);
      if (length > LONGEST_TEXT) refuse(`a text of ${length} characters in ${sheet.name}!${cell.at}, longer`);
      characters += length;
      if ("formula" in cell) formulas++;
      if ("formula" in cell || cell.value !== null) filled++;
    }
  if (filled > MOST.filledCells) refuse(`${filled} filled cells, more`);
  if (formulas > MOST.formulas) refuse(`${formulas} formulas, more`);
  if (characters > MOST.characters) refuse("more text");
}

const lengthOf = (cell: SheetCell): number =>
  "formula" in cell ? cell.formula.length : typeof cell.value === "string" ? cell.value.length : 0;

function checkFormulas(sheets: readonly Sheet[]): void {
  const known = new Set<string>();
  let steps = 0;
  for (const { name, cells } of sheets)
    for (const cell of cells) {
      if (!("formula" in cell) || known.has(formOf(cell.formula))) continue;
      known.add(formOf(cell.formula));
      const work = formulaWork(cell.formula);
      if (work.deepest > MOST.deepest) refuse(`a formula in ${name}!${cell.at} that is nested deeper`);
      steps += work.steps;
    }
  if (steps > MOST.steps) refuse("longer formulas");
}

function checkRules(sheets: readonly Sheet[], reaches: readonly Reach[]): void {
  let [rules, choices, ruled] = [0, 0, 0];
  for (const [index, { lists, flags, hints = [], oldMarks = [], tables = [], charts = [] }] of sheets.entries()) {
    const series = charts.flatMap(({ x, y }) => [x, ...y.series]);
    const marked = oldMarks.flatMap(({ ranges }) => ranges.map((range) => ({ range })));
    rules += lists.length + flags.length + hints.length + marked.length + tables.length + series.length;
    choices += lists.reduce((sum, list) => sum + list.choices.length, 0);
    ruled += [...lists, ...flags, ...hints, ...marked, ...tables, ...series].reduce(
      (sum, { range }) => sum + within(range, itemAt(reaches, index)),
      0,
    );
  }
  if (rules > MOST.rules) refuse(`${rules} lists, marks and tables, more`);
  if (choices > MOST.choices) refuse("more choices in its lists");
  if (ruled > MOST.ruledCells) refuse("lists, marks and charts over more cells");
}

/** Cells of a range as far as its sheet reaches. */
function within(range: string, { rows, columns }: Reach): number {
  const there = readRectangle(range);
  if (there === null || there.top > rows || there.left > columns) return 0;
  return cellsIn({ ...there, bottom: Math.min(there.bottom, rows), right: Math.min(there.right, columns) });
}
