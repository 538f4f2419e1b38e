import { STANDARD_DENSITY } from "../../core/air/constants";
import { designPass, type RunBudget, type SystemBudget } from "../../core/network/designPass";
import { budgetColumns } from "../../reference/answerColumns";
import { OTHER_AIR } from "../../reference/noteLimits";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, blankRow, headerRow, type Value } from "../answerRows";
import { inWords } from "../../reference/inWords";
import type { TableRun } from "../runsTable/readRun";
import type { RunsTable } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";
import { askedInVain, budgetNotes, exitNotes } from "./budgetNotes";
import { metalNotes } from "./metalNotes";
import { itemAt } from "../../reference/itemAt";

/** The answer of BUDGET: a header row, a row per row of the table, and the fan. */
export function budgetTable(table: RunsTable, density: number, system: UnitSystem): Value[][] {
  const network = table.network();
  const budget = designPass(network, surroundings(density));
  const rows = Array.from({ length: table.rows }, () => blankRow(budgetColumns));
  const metal = metalNotes(table.runs, network);
  table.runs.forEach((entry, index) => {
    const result = itemAt(budget.runs, index);
    const own = [...askedInVain(entry, table), ...budgetNotes(entry, result, system)];
    const notes = [...own, ...itemAt(metal, index), ...exitNotes(entry, index === network.exit)];
    rows[entry.row] = runRow(entry, result, joinNotes(notes), system);
  });
  return [headerRow(budgetColumns, system), ...rows, fanRow(budget, density, system)];
}

function runRow(entry: TableRun, budget: RunBudget, note: string, system: UnitSystem): Value[] {
  const { cost, state } = budget;
  return answerRow(
    budgetColumns,
    {
      run: entry.run.name,
      airflow: budget.airflow,
      velocity: budget.velocity,
      velocityPressure: budget.velocityPressure,
      friction: cost && cost.friction,
      fittings: cost && cost.entry + cost.fittings,
      device: cost && cost.device,
      runLoss: cost && cost.total,
      suctionAtEnd: state === "discharge" ? null : budget.suctionAtEnd,
      pathLoss: state === "discharge" ? null : cost && cost.toFan,
      governs: state === "asked" ? (budget.governs ? "yes" : "no") : null,
      balancedAirflow: balancedAirflow(budget),
      note,
    },
    system,
  );
}

/** What the path would draw unthrottled: Q sqrt(p_governing / p_path). */
const balancedAirflow = (budget: RunBudget): number | null =>
  budget.junctionRatio === null ? null : budget.airflow * Math.sqrt(budget.junctionRatio);

const fanRow = (budget: SystemBudget, density: number, system: UnitSystem): Value[] =>
  answerRow(
    budgetColumns,
    {
      run: "Fan",
      airflow: budget.airflow,
      runLoss: budget.dischargeLoss,
      suctionAtEnd: budget.suction,
      pathLoss: budget.staticPressure,
      note: fanNote(budget, density, system),
    },
    system,
  );

function fanNote(budget: SystemBudget, density: number, system: UnitSystem): string {
  if (budget.airflow === 0) return sayNote("noneAsks");
  const pressure = (value: number): string => inWords(value, "pressure", system);
  const airflow = inWords(budget.airflow, "airflow", system);
  const asked = sayNote("fanAsked", { airflow, pressure: pressure(budget.staticPressure) });
  if (Math.abs(density / STANDARD_DENSITY - 1) < OTHER_AIR) return asked;
  return asked + sayNote("otherAir", { pressure: pressure((budget.staticPressure * STANDARD_DENSITY) / density) });
}
