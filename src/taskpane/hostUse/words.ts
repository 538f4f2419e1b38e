/** What an action says that needs a sheet where there is none. */
export const NO_SHEET =
  "No sheet is open beside this pane. In Excel, or in the local sheet that npm start opens, this button works.";

/** What went wrong, in one sentence, whatever was thrown. */
export const failureWords = (error: unknown): string =>
  `It did not work: ${error instanceof Error && error.message !== "" ? error.message.replace(/[.\s]+$/, "") : "the sheet did not answer"}.`;

export const count = (number: number, one: string, many: string): string =>
  `${number.toLocaleString("en-GB")} ${number === 1 ? one : many}`;
