import { sheetPrefix } from "../sheets/sheetPrefix";
import type { ClubCopy } from "../share/copy";
import { WORKSHOP_CELL } from "../sheets/book/summary/summaryLayout";
import type { Calculated } from "../sheets/calculated";
import type { CopyKind, CopyOutcome } from "./host";

type MadeCopy = Extract<CopyOutcome, { made: true }>;

/** What the pane is told of a copy that was made. */
export const copyOutcome = (name: string, { live, fixed, untranslated }: ClubCopy): MadeCopy => ({
  made: true,
  name,
  live,
  fixed: fixed.length,
  untranslated: untranslated.map(({ sheet, at, why }) => `${sheetPrefix(sheet)}${at}: ${why}`),
});

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
