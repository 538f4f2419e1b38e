import { claimColumns } from "../../../reference/answerColumns";
import type { Answer } from "../parts/answerReferences";
import { facts } from "./facts";

/** Where things stand on the sheet of claims: the data sheet with a word for each check beside it, and the reasons below. */
export const FACTS = 8; // row of the data sheet's header
export const FACTS_FIRST = FACTS + 1;
export const FACTS_LAST = FACTS + facts.length;

export const CHECKS = FACTS_LAST + 7; // row of the header that CLAIM fills
export const CHECKS_LAST = CHECKS + facts.length; // there are fewer checks than facts

export const CLAIM_ANSWER = {
  sheet: "claims",
  column: 1,
  header: CHECKS,
  last: CHECKS_LAST,
  columns: claimColumns,
} as const satisfies Answer;

/** The row of the reasons that a row of the short list tells of. */
export const checkRow = (factRow: number): number => factRow - FACTS + CHECKS;
