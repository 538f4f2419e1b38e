/** What can be said of a claimed number. "holds": nothing here speaks against it; no more than that. */
export type Verdict = "holds" | "cannot tell" | "doubtful" | "impossible";

/** A claimed number beside the bound it was held against, both SI; null where too little is known for a bound. */
export interface Judged {
  readonly claimed: number;
  readonly allowed: number | null;
  readonly verdict: Verdict;
}

/** Where each verdict begins, SI. A bound that is left out is never passed. */
export interface Bounds {
  readonly unknownFrom?: number; // above it a fact that is not given decides
  readonly doubtedFrom?: number; // above it the number is doubted
  readonly impossibleFrom?: number; // above it a law forbids it, whatever is not given
}

export const ROUNDING = 1e-9; // a number typed as large as a bound has not passed it, in whichever unit

/** A claimed number against its bounds. A larger number never gets the better verdict. */
export function grade(claimed: number, { unknownFrom, doubtedFrom, impossibleFrom }: Bounds): Verdict {
  const passes = (bound: number | undefined): boolean => bound !== undefined && claimed > bound * (1 + ROUNDING);
  if (passes(impossibleFrom)) return "impossible";
  if (passes(doubtedFrom)) return "doubtful";
  return passes(unknownFrom) ? "cannot tell" : "holds";
}
