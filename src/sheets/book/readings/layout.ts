import { inRows } from "../parts/block";

/** Where things stand on the sheet of readings: the areas in the meter first, the traverse under them. */
export const AREAS = 8; // row of the header
export const AREAS_FIRST = AREAS + 1;
export const AREAS_LAST = AREAS + 8;

export const TRAVERSE = AREAS_LAST + 9; // row of the header
export const DUCT_CELL = `$B$${TRAVERSE - 6}`;
export const POINTS_CELL = `$B$${TRAVERSE - 5}`;
export const KIND_CELL = `$B$${TRAVERSE - 4}`;
export const PERCENT_CELL = `$B$${TRAVERSE - 3}`;
export const FLOOR_CELL = `$B$${TRAVERSE - 2}`;
export const TRAVERSE_FIRST = TRAVERSE + 1;
export const TRAVERSE_LAST = TRAVERSE + 10; // no rule has more points on a line

export const RESULTS = TRAVERSE_LAST + 2; // row of their title
export const MEAN_CELL = `$B$${RESULTS + 1}`;
export const AIRFLOW_CELL = `$B$${RESULTS + 2}`;
export const ERROR_CELL = `$B$${RESULTS + 3}`;
export const AREA_CELL = `$B$${RESULTS + 4}`;
export const LAST_ROW = RESULTS + 8;

/** The log of a filter, under the traverse: settings, what it comes to, and a row for each reading. */
export const FILTER = LAST_ROW + 2; // row of its title
export const RATED_CELL = `$B$${FILTER + 2}`;
export const CLEAN_AT_CELL = `$B$${FILTER + 3}`;
export const STRAYS_CELL = `$B$${FILTER + 4}`;
export const FILTER_SAYS = `A${FILTER + 5}`;
export const FILTER_LOG = FILTER + 7; // row of the header
export const FILTER_LAST = FILTER_LOG + 18;

export const inAreas = (letters: string): string => inRows(letters, AREAS_FIRST, AREAS_LAST);
export const inTraverse = (letters: string): string => inRows(letters, TRAVERSE_FIRST, TRAVERSE_LAST);
export const plain = (address: string): string => address.replaceAll("$", "");
