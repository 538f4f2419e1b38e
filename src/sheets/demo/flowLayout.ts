import { FIRST, HEADER, LAST, tableWithoutLeaks, wholeTable } from "./budgetLayout";

/**
 * Where things stand on the flow sheet. SOLVE's answer stands in the same rows as the runs table of the budget sheet, with
 * a gate before each run; the table of gains, whose length nobody knows, stands last.
 */
export const FLOW = HEADER; // row of SOLVE's header
export const FAN_ROW = LAST + 1; // the last row that SOLVE can fill
export const OPEN_CELL = "C9"; // the open runs, as SOLVE takes them
export const FLOW_UNIT = "D5"; // the unit of airflow in words

export const CURVE = FAN_ROW + 5; // row of the curve's header
export const CURVE_LAST = CURVE + 10;
export const POINT = CURVE_LAST + 1; // where the fan works

export const SEALING = POINT + 6; // row of the header of what sealing gains
export const SEALING_FIRST = SEALING + 1;
export const SEALING_LAST = SEALING_FIRST + FAN_ROW - FIRST;

export const SETS = SEALING_LAST + 4; // row of the scenarios' header
export const SETS_LAST = SETS + 5;
export const SCENARIOS = SETS_LAST + 2; // row of the header of their answer
export const SCENARIOS_LAST = SCENARIOS + SETS_LAST - SETS;

export const WISH_CELL = `B${SCENARIOS_LAST + 4}`;
export const HELPED_CELL = `B${SCENARIOS_LAST + 5}`;
export const GAINS = SCENARIOS_LAST + 7; // row of the header of GAINS' answer
export const GAINS_LAST = GAINS + 30;

export const runs = `Budget!${wholeTable}`;
export const sealedRuns = `Budget!${tableWithoutLeaks}`;
export const curve = `A${CURVE}:B${CURVE_LAST}`;

/** A column of SOLVE's answer without its header. */
export const flowColumn = (letter: string): string => `$${letter}$${FIRST}:$${letter}$${FAN_ROW}`;

/** A column of the sealing table without its header. */
export const sealingColumn = (letter: string): string => `$${letter}$${SEALING_FIRST}:$${letter}$${SEALING_LAST}`;

/** What SOLVE says of the fan, whose row comes after the last filled row of the table. */
export const atFan = (letter: string): string => `INDEX(${flowColumn(letter)},MATCH("Fan",${flowColumn("B")},0))`;

/** What the sealing table says of all hoods together, in its row of the fan. */
export const ofAllHoods = (letter: string): string =>
  `INDEX(${sealingColumn(letter)},MATCH("Fan",${sealingColumn("B")},0))`;

/** A heading that follows the units cell. */
export const inFlowUnit = (words: string): string => `="${words} ("&$D$5&")"`;
