import { sheetPrefix } from "../sheets/sheetPrefix";
import type { ClubCopy } from "../share/copy";
import type { CopyOutcome } from "./host";

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
