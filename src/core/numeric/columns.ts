/**
 * Columns of numbers that lie one after another in one piece of memory, which is much sooner had than a piece for each.
 *
 * @param length of each
 * @param count of columns at most
 * @returns the next column, full of zeros, with every call
 * @source house
 */
export function columnsOf(length: number, count: number): () => Float64Array {
  const { buffer } = new Float64Array(length * count);
  let given = 0;
  return () => {
    if (given === count) throw new Error(`more than ${count} columns were asked for`);
    return new Float64Array(buffer, given++ * length * Float64Array.BYTES_PER_ELEMENT, length);
  };
}
