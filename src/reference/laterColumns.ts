import type { AnswerColumn } from "./answerColumn";

/** Answers of functions of later files: in a file of their own they come with them (claimColumns.ts is with the tables). */

/** The answer of SCENARIOS. Those for each hood come once for every hood, with its run's name before the header. */
export const scenarioColumns = [
  { key: "scenario", header: "Scenario", quantity: null },
  { key: "hoodAirflow", header: "airflow", quantity: "airflow", forEachHood: true },
  { key: "hoodVelocity", header: "velocity", quantity: "velocity", forEachHood: true },
  { key: "fanAirflow", header: "Fan airflow", quantity: "airflow" },
  { key: "fanPressure", header: "Fan pressure", quantity: "pressure" },
  { key: "lost", header: "Lost to leaks (%)", quantity: null },
  { key: "slowest", header: "Slowest run", quantity: null },
  { key: "note", header: "Note", quantity: null },
] as const satisfies readonly (AnswerColumn & { readonly forEachHood?: true })[];

/** The answer of GAINS. */
export const gainColumns = [
  { key: "run", header: "Run", quantity: null },
  { key: "change", header: "Change", quantity: null },
  { key: "gained", header: "Airflow gained", quantity: "airflow" },
  { key: "newVelocity", header: "New velocity", quantity: "velocity" },
  { key: "note", header: "Note", quantity: null },
] as const satisfies readonly AnswerColumn[];

const [gainRun, gainChange, gainedAir, gainVelocity, gainNote] = gainColumns;

/** The answer of GAINS where it is told how far inputs may be off. */
export const sureGainColumns = [
  gainRun,
  gainChange,
  gainedAir,
  { key: "sure", header: "Gained, ±", quantity: "airflow" }, // in words, of a sealed leak a range
  gainVelocity,
  gainNote,
] as const satisfies readonly AnswerColumn[];

/** The answer of DIFFERENCE, in the unit of its readings. */
export const differenceColumns = [
  { key: "before", header: "Before", quantity: null },
  { key: "after", header: "After", quantity: null },
  { key: "change", header: "Change", quantity: null },
  { key: "limit", header: "Chance alone, ±", quantity: null },
  { key: "percent", header: "Change in %", quantity: null },
  { key: "verdict", header: "Verdict", quantity: null },
  { key: "needed", header: "Readings needed, each", quantity: null },
] as const satisfies readonly AnswerColumn[];

/** The answer of FANCURVE: its first two columns are a curve, as other functions take it. */
export const fanCurveColumns = [
  { key: "airflow", header: "Airflow", quantity: "airflow" },
  { key: "pressure", header: "Fan static pressure", quantity: "pressure" },
  { key: "error", header: "Pressure, ±", quantity: "pressure" },
  { key: "printed", header: "Printed there", quantity: "pressure" },
  { key: "share", header: "In % of what is printed", quantity: null },
  { key: "inWords", header: "In words", quantity: null },
] as const satisfies readonly AnswerColumn[];

/**
 * The answer of UNCERTAINTY. It has no column "Note", by which readers would take it for SOLVE's.
 */
export const uncertaintyColumns = [
  { key: "run", header: "Run", quantity: null },
  { key: "airflow", header: "Airflow", quantity: "airflow" },
  { key: "airflowError", header: "Airflow, ±", quantity: "airflow" },
  { key: "velocity", header: "Velocity", quantity: "velocity" },
  { key: "velocityError", header: "Velocity, ±", quantity: "velocity" },
  { key: "staticSuction", header: "Static suction", quantity: "pressure" },
  { key: "suctionError", header: "Static suction, ±", quantity: "pressure" },
  { key: "leak", header: "Leak", quantity: "airflow" },
  { key: "leakFactor", header: "Leak, times or over", quantity: null },
  { key: "mostlyFrom", header: "Airflow mostly unsure by", quantity: null },
  { key: "share", header: "Its share in %", quantity: null },
  { key: "inWords", header: "Airflow in words", quantity: null },
  { key: "beside", header: "What to know", quantity: null },
] as const satisfies readonly AnswerColumn[];

/** The answer of TOGETHER. */
export const togetherColumns = [
  { key: "open", header: "Open", quantity: null },
  { key: "hood", header: "Worst served hood", quantity: null },
  { key: "hoodAirflow", header: "Its airflow", quantity: "airflow" },
  { key: "hoodShare", header: "Of what it wants (%)", quantity: null },
  { key: "slowest", header: "Slowest run", quantity: null },
  { key: "velocity", header: "Its velocity", quantity: "velocity" },
  { key: "velocityShare", header: "Of what its dust needs (%)", quantity: null },
  { key: "verdict", header: "Verdict", quantity: null },
] as const satisfies readonly AnswerColumn[];

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
