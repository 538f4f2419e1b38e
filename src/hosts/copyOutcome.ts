import { sheetPrefix } from "../sheets/sheetPrefix";
import type { ClubCopy } from "../share/copy";
import type { Difference } from "../share/differences";
import type { Recomputed } from "../share/recomputed";
import { WORKSHOP_CELL } from "../sheets/book/summary/summaryLayout";
import type { Calculated } from "../sheets/calculated";
import type { CopyKind, CopyOutcome } from "./host";

type MadeCopy = Extract<CopyOutcome, { made: true }>;

/** What the pane is told of a copy that was made. */
export const copyOutcome = (
  name: string,
  { live, fixed, untranslated, unchecked }: Omit<ClubCopy, "book"> & Pick<Recomputed, "unchecked">,
): MadeCopy => ({
  made: true,
  name,
  live,
  fixed: fixed.length,
  untranslated: untranslated.map(({ sheet, at, why }) => `${sheetPrefix(sheet)}${at}: ${why}`),
  unchecked,
});

const MOST_NAMED = 6; // cells

/**
 * Why a copy is not made: the cells in which it would show something else than its book, or the wrong row that makes them differ,
 * since a copy tells what is wrong in fewer words.
 */
export function differsWords(differs: readonly Difference[], book: Calculated): string {
  const refused = refusalIn(book);
  if (refused !== null)
    return `no copy was made while something is refused, since a copy tells that in other words: ${refused}. Mend that first, or make a copy of values`;
  const cells = differs
    .slice(0, MOST_NAMED)
    .map(
      ({ sheet, at, inCopy, inBook }) => `${sheetPrefix(sheet)}${at} ${shownWords(inCopy)} for ${shownWords(inBook)}`,
    );
  const more = differs.length > MOST_NAMED ? `; and ${differs.length - MOST_NAMED} more cells` : "";
  return `no copy was made, since it would show something else than the budget: ${cells.join("; ")}${more}. A copy of values shows what the budget shows`;
}

/** The first cell that says what is wrong with its inputs; null where none does. */
function refusalIn({ shown }: Calculated): string | null {
  for (const [sheet, cells] of shown)
    for (const [at, { value }] of cells)
      if (value !== null && typeof value === "object" && value.error === "#VALUE!" && value.message !== undefined)
        return `${sheetPrefix(sheet)}${at} says "${value.message}"`;
  return null;
}

function shownWords(value: Difference["inCopy"]): string {
  if (value === null || value === "") return "nothing";
  if (typeof value === "number") return String(Number(value.toPrecision(12)));
  return typeof value === "object" ? value.error : JSON.stringify(value);
}

/** What a copy's making goes through, in this order, so that a host can say how far it is. */
export const COPY_STEPS = [
  "Translating the formulas",
  "Computing the copy and comparing it with the budget",
  "Writing the file",
] as const;

export const COPY_CANCELLED: CopyOutcome = { made: false, why: "Cancelled: no copy was made." };

/** 2026-11-25, by the calendar of the place where this runs. */
export const dayOf = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");

const LONGEST = 60; // characters of a workshop's name that a file's name takes

/** A copy's file is named after the workshop on Summary, where it is told, and the day, so that two copies are told apart. */
export function copyFileName({ workbook, shown }: Calculated, kind: CopyKind, day: string): string {
  const summary = workbook.sheets.find(({ key }) => key === "summary")?.name ?? "";
  const told = shown.get(summary)?.get(WORKSHOP_CELL)?.value;
  const workshop = typeof told === "string" ? fileWords(told) : "";
  return `${workshop || "air budget"} ${day} ${kind === "formulas" ? "club copy" : "values"}.xlsx`;
}

/** Only what every system takes in a file's name. */
const fileWords = (words: string): string =>
  words
    .replace(/[^\p{L}\p{N} '-]+/gu, " ")
    .replace(/ {2,}/g, " ")
    .trim()
    .slice(0, LONGEST)
    .trim();
