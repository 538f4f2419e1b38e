import type { AnswerColumn } from "./answerColumn";
import type { claimColumns } from "./claimColumns";
import type {
  scenarioColumns,
  sureGainColumns,
  togetherColumns,
  sizesColumns,
  differenceColumns,
  uncertaintyColumns,
  fanCurveColumns,
  budgetUncertaintyColumns,
  gainUncertaintyColumns,
  calibrateColumns,
} from "./laterColumns";

export type { AnswerColumn } from "./answerColumn";
export * from "./claimColumns";
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
