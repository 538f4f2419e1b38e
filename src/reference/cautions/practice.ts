import type { Provenance } from "../schema";

/** What the trade does without writing it down. */
export const practice: Provenance = {
  source: "commonPractice",
  locator: "care of the trade",
  basis: "common practice",
  checked: null,
};
