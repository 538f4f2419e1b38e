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

/** What stands beside a fact's name, wherever somebody who sorted or pasted rows has it; an empty text where nowhere. */
export const factNamed = (key: ClaimFactKey): string =>
  `IFERROR(INDEX($B$${FACTS_FIRST}:$B$${FACTS_LAST},MATCH("${key}",$A$${FACTS_FIRST}:$A$${FACTS_LAST},0))&"","")`;

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
