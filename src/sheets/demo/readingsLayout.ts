/**
 * Where things stand on the sheet of readings: the traverse and the check of the area on the first screen, the leak log
 * under them, and what follows from it last, gate by gate in the log's order.
 */
export const DUCT_CELL = "B6";
export const POINTS_CELL = "B7";
export const TRAVERSE = 8; // row of the header
export const TRAVERSE_FIRST = TRAVERSE + 1;
export const TRAVERSE_LAST = TRAVERSE + 10; // no rule has more points on a line

export const AREAS = TRAVERSE_LAST + 4; // row of the header
export const AREAS_FIRST = AREAS + 1;
export const AREAS_LAST = AREAS + 3;

export const LOG_TITLE = AREAS_LAST + 2;
export const HEAD_CELL = `B${LOG_TITLE + 3}`;
export const LOG = LOG_TITLE + 7; // row of the header
export const LOG_FIRST = LOG + 1;
export const LOG_LAST = LOG + 8; // five gates and three rows to spare

export const WORKED = LOG_LAST + 4; // row of the header
export const WORKED_FIRST = WORKED + 1;
export const WORKED_LAST = WORKED + LOG_LAST - LOG;

/** The row of "worked out" that belongs to a row of the log. */
export const workedRow = (logRow: number): number => logRow + WORKED - LOG;

export const inLog = (letters: string): string => inRows(letters, LOG_FIRST, LOG_LAST);
export const inWorked = (letters: string): string => inRows(letters, WORKED_FIRST, WORKED_LAST);
export const inAreas = (letters: string): string => inRows(letters, AREAS_FIRST, AREAS_LAST);
export const inTraverse = (letters: string): string => inRows(letters, TRAVERSE_FIRST, TRAVERSE_LAST);

/** Columns "E" or "E:F" between two rows. */
function inRows(letters: string, first: number, last: number): string {
  const [from, to = from] = letters.split(":");
  return `$${from!}$${first}:$${to!}$${last}`;
}
