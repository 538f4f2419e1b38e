import type { FailedFormula } from "../failedFormulas";
import type { CheckRule } from "../finding";

const whyOf = (error: string, message: string | undefined): string =>
  error === "#SPILL!"
    ? "Something stands where the answer wants to go: clear the cells below and beside it."
    : message === "#BUSY!"
      ? "It waits for its answer. Where it stays so, Repair, in the view Share, enters it again."
      : "What depends on this cell has no answer until its arguments are right.";

/** Our functions that refuse what they are given, with their own sentence: where one answer says it of many cells, at the first. */
export const refusal: CheckRule = ({ failed }) => {
  const said = new Set<string>();
  const isNew = ({ sheet, of, error }: FailedFormula): boolean => {
    const words = JSON.stringify([sheet, of, error.error, error.message ?? ""]);
    return !said.has(words) && said.add(words).has(words);
  };
  return failed
    .filter((one) => one.error.error !== "#NAME?" && isNew(one))
    .map(({ sheet, at, error: { error, message } }) => ({
      rule: error,
      what: message === undefined || message === "" ? `The answer in ${at} is ${error}.` : `${at}: ${message}.`,
      why: whyOf(error, message),
      source: "the function's own answer",
      sheet,
      at,
    }));
};
