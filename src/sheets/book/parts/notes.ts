import { type MarkedNote, markOf } from "../../../reference/notes";

/** How a formula looks for a note in the answer of a whole-table function: by its mark alone. */

/** What the sheets call it, in a word, where dust settles. */
export const SETTLES = "settles";

/** Whether a cell says it. */
export const saysNote = (key: MarkedNote, cell: string): string => `ISNUMBER(SEARCH("${markOf(key)}",${cell}))`;

/** How many cells of a range say it. */
export const countOfNote = (key: MarkedNote, range: string): string => `COUNTIF(${range},"*${markOf(key)}*")`;
