const MOST_NAMED = 3;

/** Why nothing of a copy was made live: it is none, or what it records is not ours. */
export function whyNotLive(left: readonly string[], nothing: string): string {
  if (left.length === 0) return `This is no club copy that says what its formulas were, so ${nothing}.`;
  const more = left.length > MOST_NAMED ? `; and ${left.length - MOST_NAMED} more` : "";
  return `No formula that this copy records can be made live, so ${nothing}: ${left.slice(0, MOST_NAMED).join("; ")}${more}.`;
}
