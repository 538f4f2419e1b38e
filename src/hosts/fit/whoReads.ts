import { tokenize } from "@borgar/fx";
import type { RangeRef } from "../../sheets/rangeRef";
import type { Sheet, Workbook } from "../../sheets/workbook";
import { rangesIn } from "./rangesIn";

/** A cell that would be left out. */
export interface Stray {
  readonly sheet: string;
  readonly at: string;
  readonly row: number;
  readonly column: number;
}

/** What reads one of these cells and would show another number without it, as a person finds it; null where nothing does. */
export function whoReads(strays: readonly Stray[], { sheets, names }: Workbook): string | null {
  if (strays.length === 0) return null;
  const covers = (range: RangeRef): boolean => strays.some((stray) => isIn(stray, range));
  const reads = (text: string, sheet: string): boolean => rangesIn(text, sheet).some(covers);
  const name = names.find(({ sheet, at }) => reads(`=${at}`, sheet));
  if (name !== undefined) return `the name ${name.name}`;
  for (const sheet of sheets) {
    const table = sheet.tables?.find(({ range }) => reads(`=${range}`, sheet.name));
    if (table !== undefined) return `the table ${table.name}`;
    if (chartRanges(sheet).some((range) => reads(`=${range}`, sheet.name))) return `a chart on ${sheet.name}`;
    for (const cell of sheet.cells)
      if ("formula" in cell && !isStray(sheet.name, cell.at, strays))
        if (reads(cell.formula, sheet.name) || choosesItsCells(cell.formula))
          return `the formula in ${sheet.name}!${cell.at}`;
  }
  return null;
}

const isIn = ({ sheet, row, column }: Stray, range: RangeRef): boolean =>
  range.sheet.toLowerCase() === sheet.toLowerCase() &&
  range.top <= row &&
  row <= range.bottom &&
  range.left <= column &&
  column <= range.right;

const isStray = (sheet: string, at: string, strays: readonly Stray[]): boolean =>
  strays.some((stray) => stray.sheet === sheet && stray.at === at);

/** Whether what a formula reads is only known when it is computed: INDIRECT, OFFSET, A1:INDEX(...). */
function choosesItsCells(formula: string): boolean {
  if (!/INDIRECT|OFFSET|:/i.test(formula)) return false;
  return tokenize(formula, { mergeRefs: true }).some(
    ({ type, value }) =>
      (type === "operator" && value === ":") || (type === "func" && /^(?:INDIRECT|OFFSET)$/i.test(value)),
  );
}

const chartRanges = ({ charts }: Sheet): string[] =>
  (charts ?? []).flatMap(({ x, y }) => [x.range, ...y.series.map(({ range }) => range)]);
