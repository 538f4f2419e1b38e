import { cellAddress, placeOf } from "../sheets/address";
import type { UnitSystem } from "../reference/quantities";
import type { Calculated, Extent } from "../sheets/calculated";
import { callsOurs } from "../sheets/ourCalls";
import { type RangeRef, rangeText } from "../sheets/rangeRef";
import { columnsOf, filledAddresses, rowsOf } from "../sheets/rectangle";
import { isTooMuchWork } from "../sheets/tooMuchWork";
import type { SheetCell } from "../sheets/workbook";
import { budget } from "./budget/budget";
import { claim } from "./claim/claim";
import { isPlain } from "./isPlain";
import type { FixedCell } from "./copy";
import type { FixedCall } from "./fixed/fixedCall";
import { foreignFunction } from "./foreign";
import { reachesOutside } from "./outside";
import type { LookupTables } from "./translate/lookupTables";
import { solve } from "./solve/solve";
import { sheetPrefix } from "../sheets/sheetPrefix";
import { whileNamed } from "./translate/lookupNames";
import { shownReader } from "./translate/shownReader";
import { translateFormula } from "./translate/translateFormula";
import { translators } from "./translate/translators";
import type { Workings } from "./translate/workings";
import { itemAt } from "../reference/itemAt";

/** A formula of ours that became plain formulas, and the cells these fill. */
interface LiveCall {
  readonly sheet: string;
  readonly at: string;
  readonly formula: string; // as it stood
  readonly cells: readonly (readonly string[])[]; // with their "="
}

/** A units cell by which calls go: the sheet on which it stands, its units, and the cell that says whether it still says so. */
export interface UnitsTaken {
  readonly sheet: string;
  readonly system: UnitSystem;
  readonly stands: string;
}

/** What becomes of the formulas of a book. Formulas that are in none of the lists stay as they are. */
export interface TranslatedSheets {
  readonly live: readonly LiveCall[];
  readonly fixed: readonly FixedCall[];
  readonly untranslated: readonly (FixedCell & { readonly formula: string; readonly extent: Extent })[];
  readonly units: readonly UnitsTaken[];
}

const TOO_MUCH = "it, or a formula that it reads, asks for more work than the sheet in the browser gives it";

const ONE_CELL: Extent = { rows: 1, columns: 1 };

const allTranslators = new Map([
  ...translators,
  ["BUDGET", budget] as const,
  ["SOLVE", solve] as const,
  ["CLAIM", claim] as const,
]);

/** What answers by a table of runs says itself that a name of the look-up tables is gone, or that the units are others. */
const ofRuns: ReadonlySet<string> = new Set(["BUDGET", "SOLVE"]);

function namedOnly(code: string, tables: LookupTables, workings: Workings): string {
  const looksUp = [tables.sheet, workings.sheet.name].some((sheet) => code.includes(sheetPrefix(sheet)));
  return looksUp ? `=${whileNamed(code.slice(1), workings)}` : code;
}

/**
 * That the ranges which make one answer of many cells have as many as when the copy was made: a cell that is inserted among them would be in none
 * of the steps. Where each of their rows has an answer of its own, the new one is seen to have none.
 */
const asManyCells = (ranges: readonly RangeRef[], answer: readonly (readonly string[])[]): string[] =>
  ranges
    .filter((range) => rowsOf(range) !== answer.length && (rowsOf(range) > 1 || columnsOf(range) !== answer[0]!.length))
    .map((range) => `ROWS(${rangeText(range)})*COLUMNS(${rangeText(range)})=${rowsOf(range) * columnsOf(range)}`);

/** A formula that answers while all this holds: its units cells stand, for instance. */
function whileAll(code: string, stands: readonly string[]): string {
  if (stands.length === 0 || isPlain(code)) return code;
  const all = stands.length === 1 ? stands[0]! : `AND(${stands.join(",")})`;
  return `=IF(${all},${code.slice(1)},NA())`;
}

/** Goes through every formula of a book once. */
export function translateSheets(book: Calculated, tables: LookupTables, workings: Workings): TranslatedSheets {
  const shown = shownReader(book);
  const live: LiveCall[] = [];
  const fixed: FixedCall[] = [];
  const untranslated: TranslatedSheets["untranslated"][number][] = [];
  const units = new Map<string, UnitsTaken>();
  for (const { name: sheet, cells } of book.workbook.sheets) {
    const taken = takenCells(sheet, cells, book);
    for (const cell of cells) {
      if (!("formula" in cell)) continue;
      const { at, formula } = cell;
      const extent = book.shown.get(sheet)?.get(at)?.fills ?? ONE_CELL;
      const where = { sheet, at, formula, extent };
      const outside = reachesOutside(formula);
      if (outside !== null) {
        untranslated.push({ ...where, function: "", why: outside });
        continue;
      }
      if (isTooMuchWork(book.shown.get(sheet)?.get(at)?.value)) {
        untranslated.push({ ...where, extent: ONE_CELL, function: "", why: TOO_MUCH });
        continue;
      }
      const foreign = foreignOf(formula);
      if (foreign !== null) {
        untranslated.push({ ...where, function: foreign, why: "a function of another add-in" });
        continue;
      }
      if (!callsOurs(formula)) continue;
      const stands = new Set<string>();
      const takesUnits = (taken: UnitsTaken): void => {
        stands.add(taken.stands);
        units.set(taken.stands, taken);
      };
      const ranges: RangeRef[] = [];
      const takesRange = (range: RangeRef): void => void ranges.push(range);
      const context = {
        sheet,
        at,
        extent,
        tables,
        workings,
        shown,
        translators: allTranslators,
        takesUnits,
        takesRange,
      };
      const translation = translateFormula(formula, context);
      if (translation.kind === "cells") {
        const asMany = translation.functions.includes("CLAIM") ? [] : asManyCells(ranges, translation.formulas);
        const looked = translation.functions.some((name) => ofRuns.has(name))
          ? translation.formulas
          : translation.formulas.map((row) =>
              row.map((code) => whileAll(namedOnly(code, tables, workings), [...stands, ...asMany])),
            );
        const written = freeRows(looked, at, extent, taken);
        filledAddresses(at, { rows: written.length, columns: itemAt(written, 0).length }).forEach((one) =>
          taken.add(one),
        );
        live.push({ sheet, at, formula, cells: written });
      } else if (translation.kind === "fixed")
        fixed.push({ ...where, function: translation.function, why: translation.why });
      else if (translation.kind === "unreadable") untranslated.push({ ...where, function: "", why: translation.why });
    }
  }
  return { live, fixed, untranslated, units: [...units.values()] };
}

/** Cells of a sheet in which something stands, or into which a formula spills. */
function takenCells(sheet: string, cells: readonly SheetCell[], { shown }: Calculated): Set<string> {
  const taken = new Set<string>();
  for (const cell of cells) {
    if ("value" in cell && cell.value === null) continue;
    taken.add(cell.at);
    const fills = shown.get(sheet)?.get(cell.at)?.fills;
    if ("formula" in cell && fills !== undefined) filledAddresses(cell.at, fills).forEach((at) => taken.add(at));
  }
  return taken;
}

/** Another add-in's function; ours, misspelt or not, are the translator's. */
const foreignOf = (formula: string): string | null => foreignFunction(formula.replace(/(_xldudf_)?duct[._]/gi, ""));

/** The rows of an answer that find blank cells: those that it fills now, and rows beyond them as far as nothing is in the way. */
function freeRows(
  formulas: readonly (readonly string[])[],
  at: string,
  now: Extent,
  taken: ReadonlySet<string>,
): readonly (readonly string[])[] {
  const { column, row } = placeOf(at);
  const blocked = formulas.findIndex(
    (line, down) =>
      (down >= now.rows || now.columns < line.length) &&
      line.some((_, across) => down + across > 0 && taken.has(cellAddress(column + across, row + down))),
  );
  return blocked < 0
    ? formulas
    : formulas.slice(0, Math.max(1, blocked)).map((line) => (blocked === 0 ? line.slice(0, 1) : line));
}
