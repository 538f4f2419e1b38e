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

/** The place of a range's cells in it, from 1. */
const places = (range: string): string => `(ROW(${range})-ROW(${range.replace(/:.*/, "")})+1)`;

/** For each cell of a range whether it holds this name; its first cell is a header, which is no name. */
const called = (range: string, name: string): string => `(${plainName(range)}=${plainName(name)})*(${places(range)}>1)`;

const countOf = (range: string, name: string): string => `SUMPRODUCT(${called(range, name)})`;
const sumOfPlaces = (range: string, name: string): string => `SUMPRODUCT(${called(range, name)}*${places(range)})`;

/** Where in a column with its header the one cell of this name stands; an error unless there is just one. */
export const placeOfName = (range: string, name: string): string =>
  `${sumOfPlaces(range, name)}/(${countOf(range, name)}=1)`;

/** Where in the runs table a run stands, from 1 for the header. */
export const placeOfRun = (frame: Frame, name: string): string => placeOfName(runsColumn(frame, "Run"), name);

/** How many runs are called so. */
export const runsCalled = (frame: Frame, name: string): string => countOf(runsColumn(frame, "Run"), name);

/** Whether another run joins this one. */
export const isJoined = (frame: Frame, name: string): string => `${countOf(runsColumn(frame, "To"), name)}>0`;

/** What stands in a column of the runs table at such a place. */
export const ofRun = (frame: Frame, column: ShownRunColumn, place: string): string =>
  `INDEX(${runsColumn(frame, column)},${place})`;

/** Whether a cell of the runs table is blank, as the functions take it: they cannot tell a blank from 0. */
export const isBlank = (code: string): string => `OR(${plainName(code)}="",${plainName(code)}="0")`;
