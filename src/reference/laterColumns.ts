import type { AnswerColumn } from "./answerColumn";

/** Answers of functions of later files, as many as it has room for: in a list of their own they come with it. */

/** The answer of GAINUNCERTAINTY. */
export const gainUncertaintyColumns = [
  { key: "run", header: "Run", quantity: null },
  { key: "change", header: "Change", quantity: null },
  { key: "gained", header: "Airflow gained", quantity: "airflow" },
  { key: "error", header: "Gained, ±", quantity: "airflow" },
  { key: "factor", header: "Of a leak, times or over", quantity: null },
  { key: "mostlyFrom", header: "Mostly unsure by", quantity: null },
  { key: "inWords", header: "In words", quantity: null },
] as const satisfies readonly AnswerColumn[];

/** The answer of LEAKGAINS, row by row as the log that it is asked about. */
export const leakGainColumns = [
  { key: "run", header: "Run", quantity: null },
  { key: "before", header: "Hoods get, as found", quantity: "airflow" },
  { key: "after", header: "Hoods get, mended", quantity: "airflow" },
  { key: "gained", header: "They gain", quantity: "airflow" },
  { key: "note", header: "Note", quantity: null },
] as const satisfies readonly AnswerColumn[];

/** The answer of SIZES: a row for each run, then rows for the whole. */
export const sizesColumns = [
  { key: "run", header: "Run", quantity: null },
  { key: "now", header: "Diameter now", quantity: "diameter" },
  { key: "buy", header: "Diameter to buy", quantity: "diameter" },
  { key: "length", header: "Length", quantity: "length" },
  { key: "price", header: "Price", quantity: null },
  { key: "slowest", header: "Least velocity", quantity: "velocity" },
  { key: "fastest", header: "Greatest velocity", quantity: "velocity" },
  { key: "need", header: "Tightest need", quantity: null },
  { key: "share", header: "It gets (%)", quantity: null },
] as const satisfies readonly AnswerColumn[];

/** The answer of BUDGETUNCERTAINTY: one row. */
export const budgetUncertaintyColumns = [
  { key: "airflow", header: "Airflow asked for", quantity: "airflow" },
  { key: "airflowError", header: "Airflow asked for, ±", quantity: "airflow" },
  { key: "pressure", header: "Pressure asked for", quantity: "pressure" },
  { key: "pressureError", header: "Pressure asked for, ±", quantity: "pressure" },
  { key: "mostlyFrom", header: "Pressure mostly unsure by", quantity: null },
  { key: "share", header: "Its share in %", quantity: null },
  { key: "inWords", header: "In words", quantity: null },
] as const satisfies readonly AnswerColumn[];

/**
 * The answer of CALIBRATE: what it comes to in words, the inputs, then the readings. Units stand in a column, since each row has its
 * own. No column is called "Note", as in UNCERTAINTY's.
 */
export const calibrateColumns = [
  { key: "part", header: "Part", quantity: null },
  { key: "what", header: "What", quantity: null },
  { key: "open", header: "Open", quantity: null },
  { key: "read", header: "Read", quantity: null },
  { key: "before", header: "Before", quantity: null },
  { key: "after", header: "After", quantity: null },
  { key: "errorBefore", header: "Before, ±", quantity: null },
  { key: "errorAfter", header: "After, ±", quantity: null },
  { key: "unit", header: "Unit", quantity: null },
  { key: "misfit", header: "Off, in its own deviations", quantity: null },
  { key: "row", header: "Row", quantity: null }, // of the table of readings
  { key: "inWords", header: "In words", quantity: null },
] as const satisfies readonly AnswerColumn[];
