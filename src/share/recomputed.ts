import type { Calculated, Shown, ShownCell } from "../sheets/calculated";
import { changesByItself } from "../sheets/changesByItself";
import { callsOurs } from "../sheets/ourCalls";
import { filledAddresses } from "../sheets/rectangle";
import { sheetPrefix } from "../sheets/sheetPrefix";
import { isTooMuchWork } from "../sheets/tooMuchWork";
import type { CellValue, SheetCell, Workbook } from "../sheets/workbook";
import type { ClubCopy } from "./copy";
import { type Difference, differencesOf } from "./differences";

/** A copy with what each formula comes to, by which its looks go in the file, and where it shows something else than its book. */
export interface Recomputed {
  readonly copy: ClubCopy;
  readonly differs: readonly Difference[];
  readonly unchecked: readonly string[]; // cells that keep the book's values: what is in them was not computed here
}

/** An engine: what the cells of a workbook of plain formulas show. */
export type Compute = (workbook: Workbook) => Shown;

/** Values by sheet, then by address. */
type Kept = Map<string, Map<string, CellValue>>;

/**
 * Computes a copy of plain formulas and compares it with its book, cell by cell. The user's own formulas that change by
 * themselves, as TODAY does, or that this engine cannot compute count as the values that they showed.
 */
export function recomputed(book: Calculated, copy: ClubCopy, compute: Compute): Recomputed {
  const { workbook } = copy.book;
  const own = ownFormulas(book, workbook);
  const kept: Kept = new Map();
  for (const one of own) if (changesByItself(one.formula)) keep(one, book, kept);
  let computed = compute(withValues(workbook, kept));
  const beyond = own.filter(({ sheet, at }) => cannotCompute(computed.get(sheet)?.get(at)?.value));
  const more = beyond.filter((one) => keep(one, book, kept));
  if (more.length > 0) computed = compute(withValues(workbook, kept));
  const differs = differencesOf(book, workbook, computed);
  return {
    copy: { ...copy, book: { workbook, shown: together(computed, copy.book.shown) } },
    differs,
    unchecked: own.filter(({ sheet, at }) => kept.get(sheet)?.has(at)).map(({ sheet, at }) => sheetPrefix(sheet) + at),
  };
}

interface OwnFormula {
  readonly sheet: string;
  readonly at: string;
  readonly formula: string;
}

/** The user's own formulas, which stand in the copy as in the book. */
const ownFormulas = ({ workbook: { sheets } }: Calculated, copy: Workbook): OwnFormula[] =>
  sheets.flatMap(({ name: sheet, cells }) => {
    const there = new Map(copy.sheets.find(({ name }) => name === sheet)?.cells.map((cell) => [cell.at, cell]));
    return cells.flatMap((cell): OwnFormula[] => {
      if (!("formula" in cell) || callsOurs(cell.formula)) return [];
      const copied = there.get(cell.at);
      const isThere = copied !== undefined && "formula" in copied && copied.formula === cell.formula;
      return isThere ? [{ sheet, at: cell.at, formula: cell.formula }] : [];
    });
  });

/** A function that the engine does not have, or more work than it does. */
const cannotCompute = (value: ShownCell["value"] | undefined): boolean =>
  typeof value === "object" && value !== null && (value.error === "#NAME?" || isTooMuchWork(value));

/** Keeps what a formula showed in every cell that it filled; false where that was an error. */
function keep({ sheet, at }: OwnFormula, { shown }: Calculated, kept: Kept): boolean {
  const there = shown.get(sheet);
  const value = there?.get(at)?.value ?? null;
  if (value !== null && typeof value === "object") return false;
  const values = kept.get(sheet) ?? new Map<string, CellValue>();
  for (const address of filledAddresses(at, there?.get(at)?.fills ?? { rows: 1, columns: 1 })) {
    const one = there?.get(address)?.value ?? null;
    if (one === null || typeof one !== "object") values.set(address, one);
  }
  kept.set(sheet, values);
  return true;
}

const withValues = (workbook: Workbook, kept: Kept): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => {
    const values = kept.get(sheet.name);
    if (values === undefined) return sheet;
    const others = sheet.cells.filter(({ at }) => !values.has(at));
    return { ...sheet, cells: [...others, ...[...values].map(([at, value]): SheetCell => ({ at, value }))] };
  }),
});

/** What the book showed, and what was computed where it had nothing. */
const together = (computed: Shown, before: Shown): Shown =>
  new Map([...computed].map(([sheet, cells]) => [sheet, new Map([...cells, ...(before.get(sheet) ?? [])])]));
