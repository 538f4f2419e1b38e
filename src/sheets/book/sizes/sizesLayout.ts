import { sizesColumns, togetherColumns } from "../../../reference/answerColumns";
import { RUNS_HEADER, RUNS_LAST } from "../layout";
import { type Answer, answerLetters } from "../parts/answerReferences";

/**
 * Where things stand on the sheet Sizes: in short, what is asked, the pipes to buy as the pane's search left them, in words and
 * run by run, and last the sets of gates, whose number nobody knows.
 */
export const STATE_CELL = "$B$8"; // whether it was searched, and whether that still holds
export const TOGETHER_CELL = "$B$7";
export const SHORT_ROW = 9; // of the first line of what a search comes to

export const ASKED = SHORT_ROW + 2; // row of its title
export const MARGIN_ROW = ASKED + 1;
export const FASTEST_ROW = ASKED + 2;
export const KEEP_ROW = ASKED + 3;
export const MOST_ROW = ASKED + 4;
export const LISTS = ASKED + 6; // row of the headers of what is typed in lists
export const LISTS_FIRST = LISTS + 1;
export const LISTS_LAST = LISTS + 14;
export const LISTS_COLUMNS = { open: "A", searched: "B", stock: "F", price: "G", fromFlow: "L" } as const;

export const PIPES_TITLE = LISTS_LAST + 2;
export const OUTCOME = PIPES_TITLE + 3; // first row of what the search comes to in words
export const OUTCOME_ROWS = 9;
const PIPES_HEADER = OUTCOME + OUTCOME_ROWS + 1;
export const PIPES_ANSWER = {
  sheet: "sizes",
  column: 1,
  header: PIPES_HEADER,
  last: PIPES_HEADER + 60,
  columns: sizesColumns,
} as const satisfies Answer;

const TOGETHER_HEADER = PIPES_ANSWER.last + 4;
export const TOGETHER_ANSWER = {
  sheet: "sizes",
  column: 1,
  header: TOGETHER_HEADER,
  last: TOGETHER_HEADER + 40, // as many as eight gates make sets of one or two
  columns: togetherColumns,
} as const satisfies Answer;
/** Each machine alone, beside it: the page for the club reads it. */
export const MOST_ALONE = 24;
export const ALONE_ANSWER = {
  sheet: "sizes",
  column: 12, // L
  header: TOGETHER_HEADER,
  last: TOGETHER_HEADER + MOST_ALONE,
  columns: togetherColumns,
} as const satisfies Answer;
/** The sets that work, gathered row by row. */
export const GATHERED = "J";
export const GATHERED_LAST = `$${GATHERED}$${TOGETHER_ANSWER.last}`;
export const VERDICTS = answerLetters(TOGETHER_ANSWER, "verdict");

/**
 * What a search rests on, a text for each row of the runs table: as it is, as it was when the pane searched, and whether the two
 * differ. A few rows more than the table has, for rows that people insert.
 */
export const WATCHED = { now: "L", then: "M", differs: "N" } as const;
export const WATCHED_FIRST = PIPES_ANSWER.header + 1;
export const WATCHED_ROWS = RUNS_LAST - RUNS_HEADER + 1 + 8;
export const WATCHED_LAST = WATCHED_FIRST + WATCHED_ROWS - 1;
export const SEARCHED_AT = `$${WATCHED.then}$${PIPES_ANSWER.header}`; // day and time
