/**
 * Columns of numbers that lie one after another in one piece of memory, which is much sooner had than a piece for each.
 *
 * @param length of each
 * @param count of columns at most
 * @returns the next column, full of zeros, with every call
 * @source house
 */
export function columnsOf(length: number, count: number): () => Float64Array {
  const all = new Float64Array(length * count);
  let end = 0;
  return () => {
    if (end >= all.length && length > 0) throw new Error(`more than ${count} columns were asked for`);
    return all.subarray(end, (end += length));
  };
}
