/** How far a sheet may reach here: far beyond any budget, and as much as the grid in the browser computes in seconds. */
export const MOST_ROWS = 50_000;
export const MOST_COLUMNS = 500;

/** Cells of a sheet from A1 to its last row and column, blank ones counted: the grid goes over them all. */
export const MOST_AREA = 1_500_000;
