import { claimColumns } from "../../../reference/answerColumns";
import { type ClaimFactKey, claimFacts } from "../../../reference/claimFacts";
import type { Answer } from "../parts/answerReferences";

/** Where things stand on the sheet of claims: the data sheet with a word for each check beside it, and the reasons below. */
export const DUCTS = 6; // row of what the owner's own ducts leave
export const COUNTED = 7; // row of how many of each verdict
export const CLOSING = 8; // row of CLAIM's closing sentence
export const FACTS = 10; // row of the data sheet's header
export const FACTS_FIRST = FACTS + 1;
export const FACTS_LAST = FACTS + claimFacts.length;

/** The cell of a fact's number. */
export const factCell = (key: ClaimFactKey): string =>
  `B${FACTS_FIRST + claimFacts.findIndex((fact) => fact.key === key)}`;

export const CHECKS = FACTS_LAST + 8; // row of the header that CLAIM fills
export const CHECKS_LAST = CHECKS + claimFacts.length; // a fact that is not read has a row too

export const CLAIM_ANSWER = {
  sheet: "claims",
  column: 1,
  header: CHECKS,
  last: CHECKS_LAST,
  columns: claimColumns,
} as const satisfies Answer;

/** The row of the reasons that a row of the short list tells of. */
export const checkRow = (factRow: number): number => factRow - FACTS + CHECKS;
