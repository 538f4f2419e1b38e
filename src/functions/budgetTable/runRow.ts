import type { RunBudget } from "../../core/network/designPass";
import { budgetColumns } from "../../reference/answerColumns";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, type Value } from "../answerRows";
import type { TableRun } from "../runsTable/readRun";

/** What the pass finds for a run, in the columns of the answer. */
export function runRow(entry: TableRun, budget: RunBudget, note: string, system: UnitSystem): Value[] {
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
