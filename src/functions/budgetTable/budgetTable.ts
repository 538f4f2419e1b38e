import { STANDARD_DENSITY } from "../../core/air/constants";
import { straightRuns } from "../../core/network/junction/meeting";
import { designPass, type SystemBudget } from "../../core/network/designPass";
import { budgetColumns } from "../../reference/answerColumns";
import { OTHER_AIR } from "../../reference/noteLimits";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { judgeTree } from "../../core/network/judged/judgeTree";
import { MOST_WRONG } from "../answer";
import { answerRow, blankRow, headerRow, type Value } from "../answerRows";
import type { Answered } from "../cellErrors";
import { inWords } from "../../reference/inWords";
import type { RunsTable, TableReader } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";
import { askedInVain, budgetNotes, exitNotes } from "./budgetNotes";
import { metalNotes } from "./metalNotes";
import { partTable } from "./partTable";
import { runRow } from "./runRow";
import { itemAt } from "../../reference/itemAt";

/** The answer of BUDGET: a header row, a row per row of the table, and the fan. Where rows are wrong, the others stand. */
export function budgetTable(reader: TableReader, density: number, system: UnitSystem): Answered[][] {
  const rows = reader.rows();
  const tree = judgeTree(rows.map((row) => ("wrong" in row ? row.wrong : row)));
  const isSound = tree.discharge === null && tree.rows.every((row) => "run" in row);
  if (isSound || tree.rows.filter((row) => !("run" in row)).length > MOST_WRONG)
    return wholeTable(reader.runs(null), density, system);
  return partTable(rows, tree, density, system);
}

function wholeTable(table: RunsTable, density: number, system: UnitSystem): Value[][] {
  const network = table.network();
  const budget = designPass(network, surroundings(density));
  const rows = Array.from({ length: table.rows }, () => blankRow(budgetColumns));
  const straight = straightRuns(network);
  const metal = metalNotes(table.runs, network);
  table.runs.forEach((entry, index) => {
    const result = itemAt(budget.runs, index);
    const own = [...askedInVain(entry, table), ...budgetNotes(entry, result, straight.has(index), system)];
    const notes = [...own, ...itemAt(metal, index), ...exitNotes(entry, index === network.exit)];
    rows[entry.row] = runRow(entry, result, joinNotes(notes), system);
  });
  return [headerRow(budgetColumns, system), ...rows, fanRow(budget, density, system)];
}

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
