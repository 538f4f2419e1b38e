const MOST_REMEMBERED = 16; // a sheet with many readers asks for few different things

/**
 * What was worked out last, by its inputs, so that a sheet in which many cells read the same works it out once. Hosts hand
 * the inputs over anew with every call, so they are compared by content. A refusal is not kept.
 */
export function remembering<Found>(): (inputs: readonly unknown[], compute: () => Found) => Found {
  const known = new Map<string, { readonly found: Found }>();
  return (inputs, compute) => {
    const key = JSON.stringify(inputs, visible);
    const kept = known.get(key) ?? { found: compute() };
    known.delete(key);
    known.set(key, kept);
    const [oldest] = known.keys();
    if (known.size > MOST_REMEMBERED && oldest !== undefined) known.delete(oldest);
    return kept.found;
  };
}

/** Answers of a function: each is copied, since a host may change what it gets. */
export function rememberingAnswers(): ReturnType<typeof remembering<(string | number)[][]>> {
  const remember = remembering<(string | number)[][]>();
  return (inputs, compute) => remember(inputs, compute).map((row) => [...row]);
}

/** JSON writes numbers that are not finite as null, which is a blank here. */
const visible = (_: string, value: unknown): unknown =>
  typeof value === "number" && !Number.isFinite(value) ? String(value) : value;
