/**
 * How many entries stand in a column above the headings of a table, where no formula reads them: there a row comes to stand that is dragged
 * by its number.
 *
 * @param from the first row of those above, in which nothing stands in that column but what is told as usual
 * @param usual what stands there and is no entry: the heading itself
 */
export function aboveHeadings(letters: string, from: number, header: number, usual = "1"): string {
  return `(COUNTA($${letters}$${from}:$${letters}$${header})-${usual})`;
}
