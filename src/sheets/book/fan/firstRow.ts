const BELOW = 10_000; // a row below any that is inserted

/** The first row of some in which a condition holds, 1 or 0 for each; 0 where it holds in none. */
export const firstRow = (holds: string, rows: string): string =>
  `MOD(${BELOW}-SUMPRODUCT(MAX(${holds}*(${BELOW}-ROW(${rows})))),${BELOW})`;
