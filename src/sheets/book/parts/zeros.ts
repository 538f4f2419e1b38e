import { DEGREES, NONE, NOT_READ, STILL } from "../../../reference/zeroWords";

/**
 * Parts of formulas that hand a cell on as a function takes it. Here a blank and a 0 can be told apart; a function cannot, since
 * some hosts send a blank as 0, so it takes a word for a 0 that is meant.
 */
const zeroAs = (cell: string, words: readonly string[]): string => `IF(${cell}=0,"${words[0]!}",${cell})`;

/** An error of a meter; a blank takes the usual one, which stands beside the cell. */
export const errorOf = (cell: string, usual: string): string => `IF(${cell}="",${usual},${zeroAs(cell, NONE)})`;

/** A temperature that is not blank. */
export const temperatureOf = (cell: string): string => zeroAs(cell, DEGREES);

/** A reading of a traverse. */
export const readingOf = (cell: string): string => `IF(${cell}="","${NOT_READ[0]!}",${zeroAs(cell, STILL)})`;
