/** The number format of a cell for text alone. */
export const TEXT = "@";

/** What such a cell takes as it stands: there an apostrophe before it would be a letter of it. */
export const STAYS_TEXT = /^[^=+\-'@]/;
