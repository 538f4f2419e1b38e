import { isWeak, type Provenance } from "./schema";
import { sources } from "./sources";

/** How a source is told: beside a number nobody should have to guess whether it was seen in print. */

/** A source's title with the basis behind it, unless the title says it itself ("EN 12779, ..., from memory"). */
export const titleWithBasis = (title: string, basis: string): string =>
  basis === "" || title.toLowerCase().includes(basis) ? title : `${title} (${basis})`;

/** Title, place in it and basis of each row, once where rows share them. */
export const cite = (...rows: readonly Provenance[]): string =>
  distinct(
    rows.map(({ source, locator, basis }) => titleWithBasis(`${sources[source].title}, ${locator}`, basis)),
  ).join("; ");

/** The titles of what a value rests on, and the bases, each as one text. */
export const titlesOf = (rows: readonly Provenance[]): string =>
  distinct(rows.map(({ source }) => sources[source].title)).join("; ");
export const basesOf = (rows: readonly Provenance[]): string => distinct(rows.map(({ basis }) => basis)).join(" and ");

/** The weak bases of what a value rests on, as one text; "" where all of it was seen in print. */
export const weakBases = (rows: readonly Provenance[]): string => basesOf(rows.filter(isWeak));

const distinct = (words: readonly string[]): string[] => [...new Set(words)];
