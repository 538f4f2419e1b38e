import type { AnswerColumn } from "./answerColumn";
import type { gainUncertaintyColumns, sizesColumns, budgetUncertaintyColumns, calibrateColumns } from "./laterColumns";

export type { AnswerColumn } from "./answerColumn";
export * from "./laterColumns";

/** The answer of BUDGET, column by column. */
export const budgetColumns = [
  { key: "run", header: "Run", quantity: null },
  { key: "airflow", header: "Airflow", quantity: "airflow" },
  { key: "velocity", header: "Velocity", quantity: "velocity" },
  { key: "velocityPressure", header: "Velocity pressure", quantity: "pressure" },
  { key: "friction", header: "Friction", quantity: "pressure" },
  { key: "fittings", header: "Fittings", quantity: "pressure" },
  { key: "device", header: "Device", quantity: "pressure" },
  { key: "runLoss", header: "Run loss", quantity: "pressure" },
  { key: "suctionAtEnd", header: "Suction at its end", quantity: "pressure" },
  { key: "pathLoss", header: "Path loss to fan", quantity: "pressure" },
  { key: "governs", header: "Governs", quantity: null },
  { key: "balancedAirflow", header: "Airflow when balanced", quantity: "airflow" },
  { key: "note", header: "Note", quantity: null },
] as const satisfies readonly AnswerColumn[];

/** The answer of SOLVE. */
export const solveColumns = [
  { key: "run", header: "Run", quantity: null },
  { key: "airflow", header: "Airflow", quantity: "airflow" },
  { key: "velocity", header: "Velocity", quantity: "velocity" },
  { key: "staticSuction", header: "Static suction", quantity: "pressure" },
  { key: "leak", header: "Leak", quantity: "airflow" },
  { key: "runLoss", header: "Run loss", quantity: "pressure" },
  { key: "gate", header: "Gate", quantity: null },
  { key: "note", header: "Note", quantity: null },
] as const satisfies readonly AnswerColumn[];

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

/** The answer of CLAIM. */
export const claimColumns = [
  { key: "check", header: "Check", quantity: null },
  { key: "claimed", header: "Their number", quantity: null },
  { key: "allowed", header: "Law or rule of thumb allows", quantity: null },
  { key: "unit", header: "Unit", quantity: null },
  { key: "verdict", header: "Verdict", quantity: null },
  { key: "why", header: "Why", quantity: null },
  { key: "source", header: "Source", quantity: null },
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

export type BudgetKey = (typeof budgetColumns)[number]["key"];
export type SolveKey = (typeof solveColumns)[number]["key"];
export type ScenarioKey = (typeof scenarioColumns)[number]["key"];
export type GainKey = (typeof sureGainColumns)[number]["key"];
export type TogetherKey = (typeof togetherColumns)[number]["key"];
export type SizesKey = (typeof sizesColumns)[number]["key"];
export type ClaimKey = (typeof claimColumns)[number]["key"];
export type DifferenceKey = (typeof differenceColumns)[number]["key"];
export type UncertaintyKey = (typeof uncertaintyColumns)[number]["key"];
export type FanCurveKey = (typeof fanCurveColumns)[number]["key"];
export type BudgetUncertaintyKey = (typeof budgetUncertaintyColumns)[number]["key"];
export type GainUncertaintyKey = (typeof gainUncertaintyColumns)[number]["key"];
export type CalibrateKey = (typeof calibrateColumns)[number]["key"];
