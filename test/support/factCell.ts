import { type ClaimFactKey, claimFacts } from "../../src/reference/claimFacts";
import { FACTS_FIRST } from "../../src/sheets/book/claims/layout";

/** The cell of a fact's number on the sheet Claims as it is made. */
export const factCell = (key: ClaimFactKey): string =>
  `B${FACTS_FIRST + claimFacts.findIndex((fact) => fact.key === key)}`;
