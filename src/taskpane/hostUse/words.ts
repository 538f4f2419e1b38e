import type { InsertOutcome } from "../../hosts/host";

/** What an action says that needs a sheet where there is none. */
export const NO_SHEET =
  "No sheet is open beside this pane. In Excel, or in the local sheet that npm start opens, this button works.";

/** What an action says that would write what cells show, where they may show numbers of before the last change. */
export const OLD_NUMBERS =
  "Excel calculates this book only when asked, so its cells may show old numbers: set Formulas › Calculation Options to Automatic first.";

/** What a long action says that has found something for a book in whose place another one was opened. */
export const ANOTHER_BOOK = "Another book was opened meanwhile, so nothing was written: choose sizes again.";

/** What went wrong, in one sentence, whatever was thrown. */
export function failureWords(error: unknown): string {
  // an error of the page around the pane is no instance of the pane's own class
  const message = (error as { readonly message?: unknown } | null | undefined)?.message;
  const why = typeof message === "string" ? message.replace(/[.\s]+$/, "") : "";
  return `It did not work: ${why || "the sheet did not answer"}.`;
}

/** What became of a value or formula that was written. */
export const writtenWords = ({ at, isBlocked, isText }: Extract<InsertOutcome, { written: true }>): string =>
  isText === true
    ? `Written into ${at}, but that cell is formatted as text: it holds the letters, and no sum takes them. Give it the number format General, then insert again.`
    : isBlocked
      ? `Written into ${at}, but its answer needs more cells than are free there (#SPILL!). Clear what stands below or beside it, or move the formula.`
      : `Written into ${at}.`;

export const readsItselfWords = (at: string): string =>
  `The formula reads ${at} itself, so it was not written there: select another cell, then insert it.`;

export const count = (number: number, one: string, many: string): string =>
  `${number.toLocaleString("en-GB")} ${number === 1 ? one : many}`;
