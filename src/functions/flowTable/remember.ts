const MOST_REMEMBERED = 16; // answers; a sheet with many readers asks for few different ones

/**
 * Answers by their inputs, so that a sheet in which many cells read the same network solves it once. Hosts hand the inputs
 * over anew with every call, so they are compared by content; the answer is copied, since a host may change what it gets.
 */
export function remembering(): (
  inputs: readonly unknown[],
  compute: () => (string | number)[][],
) => (string | number)[][] {
  const answers = new Map<string, (string | number)[][]>();
  return (inputs, compute) => {
    const key = JSON.stringify(inputs, visible);
    const known = answers.get(key);
    const answer = known ?? compute();
    answers.delete(key);
    answers.set(key, answer);
    if (answers.size > MOST_REMEMBERED) answers.delete(answers.keys().next().value!);
    return answer.map((row) => [...row]);
  };
}

/** JSON writes numbers that are not finite as null, which is a blank here. */
const visible = (_: string, value: unknown): unknown =>
  typeof value === "number" && !Number.isFinite(value) ? String(value) : value;
