import type { Rule } from "../finding";
import { failedFormulas } from "./ourFormulas";

/** Our functions that refuse what they are given, with their own sentence. */
export const refusal: Rule = (book) =>
  failedFormulas(book)
    .filter(({ error }) => error.error !== "#NAME?")
    .map(({ sheet, at, error: { error, message } }) => ({
      rule: error,
      what: message === undefined || message === "" ? `The formula in ${at} shows ${error}.` : `${at}: ${message}.`,
      why:
        error === "#SPILL!"
          ? "Something stands where the answer wants to go: clear the cells below and beside it."
          : "What depends on this cell has no answer until its arguments are right.",
      source: "the function's own answer",
      sheet,
      at,
    }));
