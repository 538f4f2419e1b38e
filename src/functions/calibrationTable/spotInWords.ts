import type { Reading } from "../../core/network/calibration/reading";
import type { OpenSet, Typed } from "./calibration";

export const spotInWords = (what: Reading["what"], at: string): string => `${what} at ${at}`;

/** Readings as a sentence names them. */
export const namesOf = (readings: readonly Reading[], typed: readonly Typed[]): string =>
  typed
    .filter(({ reading }) => reading !== null && readings.includes(reading))
    .map(({ row, reading }) => `${spotInWords(reading!.what, row.at)} (row ${row.row})`)
    .join(", ");

/** A set of open gates as a sentence names it. */
export const openInWords = ({ words }: OpenSet): string =>
  words === "" ? "the gates as the table has them" : `${words} open`;
