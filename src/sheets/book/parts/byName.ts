import type { ShownRunColumn } from "../../../reference/runColumns";
import type { Frame } from "../frame";
import { runsColumn } from "../layout";

/**
 * What belongs to a run is found by the run's name, never by the row in which something stands on another sheet: people
 * insert rows, delete, sort and cut. A comparison with = knows no wildcards, and inside SUMPRODUCT every program takes whole
 * columns; & is not used on a column, since the grid in the browser joins only single cells.
 */

/** A name as the functions compare it: without regard to case, outer and repeated blanks, hyphens and underscores. */
export function plainName(code: string): string {
  const blanks = ["CHAR(10)", '"\u00a0"', '"-"', '"_"'];
  return `LOWER(TRIM(${blanks.reduce((text, sign) => `SUBSTITUTE(${text},${sign}," ")`, code)}))`;
}

/** What stands in a column of the runs table at such a place. */
export const ofRun = (frame: Frame, column: ShownRunColumn, place: string): string =>
  `INDEX(${runsColumn(frame, column)},${place})`;

/** Whether a cell holds a number as a text: a function reads it, a sum passes over it. */
export const isText = (code: string): string => `AND(ISTEXT(${code}),TRIM(${code})<>"")`;

/** A number of the runs table for a column that is added up; a text in its place is told there, and stops the sum. */
export const numberOfRun = (frame: Frame, column: ShownRunColumn, place: string): string => {
  const cell = ofRun(frame, column, place);
  return `IF(COUNT(${cell})=0,IF(${isText(cell)},"a text",""),${cell})`;
};

/** The sum of such a column. */
export const sumOfRuns = (frame: Frame, column: string, code = `SUM(${column})`): string =>
  `IF(COUNTIF(${column},"a text")>0,"see ${frame.sheet("runs")}",${code})`;

/** Whether a cell of the runs table is blank, as the functions take it: they cannot tell a blank from 0. */
export const isBlank = (code: string): string => `OR(${plainName(code)}="",${plainName(code)}="0")`;
