import { calibrateColumns } from "../../../reference/answerColumns";
import { readingColumns } from "../../../reference/readingColumns";
import { columnLetters } from "../../address";
import type { Answer } from "../parts/answerReferences";

/** Where things stand on the sheet Measured: in short, the readings with a word beside each, what they say of the inputs. */
export const SHORT = 8; // row of the first sentence
export const SAYS = `$B$${SHORT}`; // begins with LOOK where there is no answer
export const SENTENCES = ["Fan", "Readings", "Read next", "Not told"] as const; // in the order of CALIBRATE's first rows

export const READINGS = 14; // row of the header
export const READINGS_LAST = READINGS + 30;
export const READINGS_COLUMN = 2; // B; column A holds the first words of what is said of them
const BEHIND = READINGS_COLUMN + readingColumns.length;
export const LAST_READING = columnLetters(BEHIND - 1);
export const WORDS = columnLetters(BEHIND); // what is said of the row's readings

/** The picture of each ± before and after, over the inputs, since nobody knows how many these are; far below the cells that it is drawn from. */
export const PICTURE = READINGS_LAST + 2; // row of its title
export const PICTURE_LAST = PICTURE + 16;

export const INPUTS = PICTURE_LAST + 4; // row of the header
export const MOST_INPUTS = 24;
export const INPUTS_LAST = INPUTS + MOST_INPUTS;
export const MORE_INPUTS = INPUTS_LAST + 1; // row that says how many there are beyond these
export const NOTES = MORE_INPUTS + 2;
export const DRAWN = NOTES + 5; // row of the header of those cells

/** The columns of the inputs that are shown, each in its place from A on. */
export const inputColumns = [
  { key: "what", header: "Input" },
  { key: "before", header: "Before" },
  { key: "after", header: "After" },
  { key: "errorBefore", header: "Before, ±" },
  { key: "errorAfter", header: "After, ±" },
  { key: "unit", header: "Unit" },
  { key: "number", header: "No." }, // as the picture has it
  { key: "inWords", header: "Told" },
] as const;

export const CALIBRATE_ANSWER = {
  sheet: "measured",
  column: BEHIND + 2,
  header: READINGS,
  last: READINGS + SENTENCES.length + 260,
  columns: calibrateColumns,
} as const satisfies Answer;
