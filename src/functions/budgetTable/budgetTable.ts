import { STANDARD_DENSITY } from "../../core/air/constants";
import { designPass, type RunBudget, type SystemBudget } from "../../core/network/designPass";
import { buildNetwork } from "../../core/network/tree";
import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";
import { readRuns } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";
import { budgetNotes } from "./budgetNotes";
import { inUnit } from "../runsTable/inUnit";

type Value = number | string;

/** The columns of BUDGET: header, quantity, and what a run shows there. */
const COLUMNS: readonly { header: string; quantity: Quantity; of: (budget: RunBudget) => number | null }[] = [
  { header: "Airflow", quantity: "airflow", of: ({ airflow }) => airflow },
  { header: "Velocity", quantity: "velocity", of: ({ velocity }) => velocity },
  { header: "Velocity pressure", quantity: "pressure", of: (budget) => budget.velocityPressure },
  { header: "Friction", quantity: "pressure", of: ({ cost }) => cost && cost.friction },
  { header: "Fittings", quantity: "pressure", of: ({ cost }) => cost && cost.entry + cost.fittings },
  { header: "Device", quantity: "pressure", of: ({ cost }) => cost && cost.device },
  { header: "Run loss", quantity: "pressure", of: ({ cost }) => cost && cost.total },
  {
    header: "Suction at its end",
    quantity: "pressure",
    of: (budget) => (budget.state === "discharge" ? null : budget.suctionAtEnd),
  },
  {
    header: "Path loss to fan",
    quantity: "pressure",
    of: ({ cost, state }) => (state === "discharge" ? null : cost && cost.toFan),
  },
];

const WORDS = ["Governs", "Airflow when balanced", "Note"] as const;

/** The answer of BUDGET: a header row, a row per row of the table, and the fan. */
export function budgetTable(runs: unknown, density: number, system: UnitSystem): Value[][] {
  const table = readRuns(runs, system);
  const network = buildNetwork(table.runs.map(({ run }) => run));
  const budget = designPass(network, surroundings(density));
  const shown = (value: number | null, quantity: Quantity): Value =>
    value === null ? "" : fromSI(value, unitOf(quantity, system));
  const width = 1 + COLUMNS.length + WORDS.length;
  const rows: Value[][] = Array.from({ length: table.rows }, () => new Array<Value>(width).fill(""));
  table.runs.forEach((entry, index) => {
    const result = budget.runs[index]!;
    rows[entry.row] = [
      entry.run.name,
      ...COLUMNS.map(({ quantity, of }) => shown(of(result), quantity)),
      governs(result),
      shown(balancedAirflow(result), "airflow"),
      budgetNotes(entry, result, system),
    ];
  });
  return [headers(system), ...rows, fanRow(budget, density, system)];
}

const headers = (system: UnitSystem): string[] => [
  "Run",
  ...COLUMNS.map(({ header, quantity }) => `${header} (${unitOf(quantity, system).label})`),
  WORDS[0],
  `${WORDS[1]} (${unitOf("airflow", system).label})`,
  WORDS[2],
];

const governs = (budget: RunBudget): string => (budget.state === "asked" ? (budget.governs ? "yes" : "no") : "");

/** What the path would draw unthrottled: Q sqrt(p_governing / p_path). */
const balancedAirflow = (budget: RunBudget): number | null =>
  budget.junctionRatio === null ? null : budget.airflow * Math.sqrt(budget.junctionRatio);

function fanRow(budget: SystemBudget, density: number, system: UnitSystem): Value[] {
  const at = (value: number, quantity: Quantity): number => fromSI(value, unitOf(quantity, system));
  const pressures = [
    at(budget.dischargeLoss, "pressure"),
    at(budget.suction, "pressure"),
    at(budget.staticPressure, "pressure"),
  ];
  return [
    "Fan",
    at(budget.airflow, "airflow"),
    "",
    "",
    "",
    "",
    "",
    ...pressures,
    "",
    "",
    fanNote(budget, density, system),
  ];
}

function fanNote(budget: SystemBudget, density: number, system: UnitSystem): string {
  if (budget.airflow === 0) return "no open hood asks for air";
  const asked = `fan asked for: ${inUnit(budget.airflow, "airflow", system)} at ${inUnit(budget.staticPressure, "pressure", system)} fan static pressure`;
  const standard = Math.abs(density / STANDARD_DENSITY - 1) < 0.005;
  return standard
    ? asked
    : `${asked} in this air; on a curve for standard air look for ${inUnit((budget.staticPressure * STANDARD_DENSITY) / density, "pressure", system)}`;
}
