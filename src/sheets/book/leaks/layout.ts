import { leakGainColumns, type SolveKey } from "../../../reference/answerColumns";
import { placeOfColumn } from "../../../reference/columnsOfAnswers";
import { columnLetters } from "../../address";
import type { Frame } from "../frame";
import { FLOW_HEADER, FLOW_LAST } from "../layout";
import { answerColumn, answerLetters, FLOW_ANSWER } from "../parts/answerReferences";
import { inRows, thisRow } from "../parts/block";

/**
 * Where things stand on the sheet of leaks: what it comes to, the meter, the log, what follows from the log gate by gate
 * in the log's order, and last what mending gives at the hoods, a row for each run as on the sheet Flow.
 */
export const IN_SHORT = 6; // row of its title
export const MEND_NEXT_CELL = "B7"; // its text names the gate to mend next

export const TOTALS_SAY = "D6"; // that one of them was typed over
export const LEAKS_SAY = "D7"; // what is wrong with those below

export const NOT_COUNTED = "Not counted:"; // what the sentence beside it says of readings that no sum has

export const TWICE = "check it: this gate has more than one row"; // how column J begins then, and no sum is to be had

export const SUCTION_SLIP = "check it: suction "; // how a row worked out begins where the typed one is far from what can be; column J says it, too
export const TOO_MUCH = 8; // times what is there or what is estimated: mostly a decimal place. House judgement

export const METER = 14; // row of its title
export const HEAD_CELL = "$B$15";
export const PERCENT_CELL = "$B$16";
export const FLOOR_CELL = "$B$17";
export const MOST_CELL = "$B$18"; // the largest airflow that the head can read
export const REPEATS = METER + 5; // row of one leak read again and again
export const REPEAT_LETTERS = ["B", "C", "D", "E", "F", "G", "H", "I"] as const;
export const REPEATS_TYPED = `$B$${REPEATS}:$I$${REPEATS}`;
export const REPEATS_HANDED = `$K$${REPEATS}:$R$${REPEATS}`; // as DIFFERENCE takes them
export const REPEATS_MEAN = `$S$${REPEATS}`;
export const CHANCE_CELL = `$T$${REPEATS}`; // what chance makes of no change at that mean

export const LOG = 22; // row of the header
export const LOG_FIRST = LOG + 1;
export const LOG_LAST = LOG + 16;

export const WORKED = LOG_LAST + 4; // row of the header
export const WORKED_FIRST = WORKED + 1;
export const WORKED_LAST = WORKED + LOG_LAST - LOG;
export const SAVED = "AA"; // of what is worked out, as the three below
export const SUCTION_HANDED = "AB";
export const FLOW_PLACE = "AC"; // the place of its run in SOLVE's answer
export const TURNED = "AD"; // that its gate stands otherwise than it was found
export const UNIT_LEAK_CELL = `$Z$${WORKED_FIRST}`; // what an opening of 1 lets through at a suction of 1
export const WORKED_NOTES = WORKED_LAST + 1;

export const HOODS = WORKED_NOTES + 10; // row of the header
export const HOODS_FIRST = HOODS + 1;
export const HOODS_LAST = HOODS + FLOW_LAST - FLOW_HEADER;

/** Right of what column J says at its longest: what the open hoods gain by each gate, in the rows of the log. */
export const GAIN_COLUMN = 16; // P
export const GAINED = columnLetters(GAIN_COLUMN + placeOfColumn(leakGainColumns, "gained"));

/** The row of "worked out" that belongs to a row of the log. */
export const workedRow = (logRow: number): number => logRow + WORKED - LOG;

/** What stands in the log in the row of the formula, which is one of the log or of what follows from it. */
export const logged = (letters: string, header: number = LOG): string => thisRow(letters, LOG, LOG_LAST, header);
/** What follows from the row of the log in which the formula stands. */
export const workedOf = (letter: string): string => thisRow(letter, WORKED, WORKED_LAST, LOG);

export const inLog = (letters: string): string => inRows(letters, LOG_FIRST, LOG_LAST);
/** With the header: a row that is inserted right below it belongs to the log, too. */
export const inHeadedLog = (letters: string): string => inRows(letters, LOG, LOG_LAST);
export const inWorked = (letters: string): string => inRows(letters, WORKED_FIRST, WORKED_LAST);
export const inHoods = (letters: string): string => inRows(letters, HOODS_FIRST, HOODS_LAST);

/** A column of SOLVE's answer on the sheet Flow without its header. */
export const flowColumn = (frame: Frame, key: SolveKey): string => answerColumn(FLOW_ANSWER, key, frame);

export const flowCell = (frame: Frame, key: SolveKey, row: number): string =>
  frame.ref("flow", `${answerLetters(FLOW_ANSWER, key)}${row}`);

/** SOLVE's answer has the order of the runs table. */
export const flowRow = (hoodsRow: number): number => hoodsRow - HOODS + FLOW_HEADER;
