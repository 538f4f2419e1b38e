/** What can be said of a claimed number. "holds": nothing here speaks against it; no more than that. */
export type Verdict = "holds" | "doubtful" | "impossible" | "cannot tell";

/** A claimed number beside the bound it was held against, both SI. */
export interface Judged {
  readonly claimed: number;
  readonly allowed: number;
  readonly verdict: Verdict;
}

/**
 * A claimed number against its bounds. A larger number never gets the better verdict.
 *
 * @param claimed [SI]
 * @param doubtedFrom [SI] above it the number is doubted
 * @param impossibleFrom [SI] above it no such thing can be; Infinity where physics forbids nothing
 */
export function grade(claimed: number, doubtedFrom: number, impossibleFrom: number): Verdict {
  if (claimed > impossibleFrom) return "impossible";
  return claimed > doubtedFrom ? "doubtful" : "holds";
}
