import { LOOK } from "./look";

/**
 * A sentence where something stands in a column above the headings of a table, where no formula reads it: there a row comes to stand that is
 * dragged by its number.
 *
 * @param from the first row of those above
 * @param usual how many cells of them are filled anyway, the heading among them
 */
export function aboveHeadings(letters: string, from: number, header: number, usual = "1"): string {
  return `IF(COUNTA($${letters}$${from}:$${letters}$${header})>${usual},"${LOOK} what stands above the headings is left out. ","")`;
}
