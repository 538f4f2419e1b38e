import type { Calculated, ShownCell } from "../../sheets/calculated";
import type { Sheet, SheetCell } from "../../sheets/workbook";
import type { Original } from "../originals";
import { quotedText } from "../references";
import type { CellIndex } from "./cellIndex";
import { checkCellFor, headCellFor, takenIn } from "./checkCells";
import { comparesSomething, type FixedCall, OLD_FLAG } from "./fixedCall";
import type { FixedSheet } from "./fixedSheet";
import { oldMarks } from "./oldMarks";
import { rangesRead } from "./rangesRead";
import type { RestsOn } from "./restOn";

/**
 * The sheets with marks on their old numbers, and in words whether inputs have changed: beside each fixed answer, and at the head of
 * every sheet that has one or rests on one of another. With what was added for it.
 */
export function addChecks(
  sheets: readonly Sheet[],
  calls: readonly FixedCall[],
  resting: RestsOn,
  checks: FixedSheet,
  book: Calculated,
  index: CellIndex,
  date: string,
): { sheets: Sheet[]; added: Original[] } {
  const comparing = calls.filter(comparesSomething);
  if (comparing.length === 0) return { sheets: [...sheets], added: [] };
  const read = rangesRead(book, index);
  const added: Original[] = [];
  const checked = sheets.map((sheet): Sheet => {
    const here = comparing.filter((call) => call.sheet === sheet.name);
    const rests = resting.get(sheet.name) ?? new Map<string, readonly FixedCall[]>();
    const all = new Set([...here, ...[...rests.values()].flat()]);
    if (all.size === 0) return sheet;
    const taken = takenIn(sheet);
    const readHere = read.get(sheet.name) ?? [];
    const shown = book.shown.get(sheet.name) ?? new Map<string, ShownCell>();
    const words: SheetCell[] = [];
    const put = (at: string | null, code: string): void => {
      if (at === null) return;
      taken.add(at);
      words.push({ at, formula: `=${code}`, style: "note" });
    };
    const behind = comparing.filter((call) => all.has(call));
    for (const call of here) put(checkCellFor(call, taken, readHere, sheet.print?.area), checks.state(call));
    put(headCellFor(sheet, taken, readHere), headWords(behind, sheet.name, checks, date));
    const places = new Set(words.map(({ at }) => at));
    const told = { ...sheet, cells: [...sheet.cells.filter(({ at }) => !places.has(at)), ...words] };
    const { cells: counts, marks, last } = oldMarks(told, here, rests, shown, checks);
    [...words, ...counts].forEach(({ at }) =>
      added.push({ sheet: sheet.name, at, formula: "", written: { rows: 1, columns: 1 } }),
    );
    return {
      ...sheet,
      cells: [...told.cells, ...counts],
      flags: [
        ...sheet.flags,
        ...words.map(({ at }) => ({ range: at, containsText: OLD_FLAG, style: "flag" as const })),
      ],
      oldMarks: marks,
      // the counts are for the marks, not for paper
      ...(sheet.print === undefined ? {} : { print: { ...sheet.print, area: sheet.print.area ?? `A1:${last}` } }),
    };
  });
  return { sheets: checked, added };
}

const MOST_NAMED = 4; // sheets; a text in a formula has at most 255 characters

/** What of a sheet is fixed, its own and what comes from others, with its day; and whether it is old. */
function headWords(calls: readonly FixedCall[], sheet: string, checks: FixedSheet, date: string): string {
  const others = [...new Set(calls.map((call) => call.sheet))].filter((name) => name !== sheet);
  const from = others.length > MOST_NAMED ? "other sheets" : others.join(", ");
  const what = [
    ...(calls.some((call) => call.sheet === sheet) ? ["what is slanted"] : []),
    ...(others.length === 0 ? [] : [`what comes from ${from}`]),
  ];
  const asOf = quotedText(`${what.join(" and ")} is as of ${date}`);
  return `IF(IFERROR(${checks.changed(calls)},1)=0,${asOf},${quotedText(`${OLD_FLAG}: what is struck out is old`)})`;
}
