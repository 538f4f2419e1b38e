import type { AnswerColumn } from "./answerColumn";

/** The answer of CLAIM. */
export const claimColumns = [
  { key: "check", header: "Check", quantity: null },
  { key: "claimed", header: "Their number", quantity: null },
  { key: "allowed", header: "Law or rule of thumb allows", quantity: null },
  { key: "unit", header: "Unit", quantity: null },
  { key: "verdict", header: "Verdict", quantity: null },
  { key: "why", header: "Why", quantity: null },
  { key: "source", header: "Source", quantity: null },
] as const satisfies readonly AnswerColumn[];
