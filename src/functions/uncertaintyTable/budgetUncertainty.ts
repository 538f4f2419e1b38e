import { designPass } from "../../core/network/designPass";
import { asMeant } from "../../core/measuring/asMeant";
import { budgetSpread } from "../../core/network/derivative/budgetSpread";
import { budgetUncertaintyColumns, type BudgetUncertaintyKey } from "../../reference/answerColumns";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import type { RunsTable } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";
import { inputInWords } from "./inputInWords";
import type { Deviations } from "./readErrors";

/** The answer of BUDGETUNCERTAINTY: a header, and what the hoods ask of the fan with its ±. */
export function budgetUncertainty(
  table: RunsTable,
  density: number,
  errors: Deviations,
  system: UnitSystem,
): Value[][] {
  const network = table.network();
  const air = surroundings(density);
  const { airflow, staticPressure } = designPass(network, air);
  const off = budgetSpread(network, air, ({ kind }) => errors.get(kind === "junction" ? "fittings" : kind) ?? 0);
  const words = (value: number, error: number, quantity: "airflow" | "pressure"): string => {
    const unit = unitOf(quantity, system);
    const meant = asMeant(fromSI(value, unit), fromSI(error, unit));
    return `${meant.value}${error > 0 ? ` ± ${meant.error}` : ""} ${unit.label}`;
  };
  const row: Record<BudgetUncertaintyKey, Value | null> = {
    airflow,
    airflowError: off.airflow,
    pressure: staticPressure,
    pressureError: off.pressure,
    mostlyFrom: off.largest === null ? null : inputInWords(off.largest.kind, network.runs[off.largest.run]?.name ?? ""),
    share: off.largest === null ? null : 100 * off.share,
    inWords: `${words(airflow, off.airflow, "airflow")} at ${words(staticPressure, off.pressure, "pressure")}`,
  };
  return [headerRow(budgetUncertaintyColumns, system), answerRow(budgetUncertaintyColumns, row, system)];
}
