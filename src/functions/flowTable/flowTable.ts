import { dischargeLoss } from "../../core/network/dischargeLoss";
import { lossesAtJunctions, meetingsOf } from "../../core/network/junction/meeting";
import { runLoss } from "../../core/network/runLoss";
import { solveColumns } from "../../reference/answerColumns";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, blankRow, headerRow, type Value } from "../answerRows";
import { inWords } from "../../reference/inWords";
import type { RunsTable } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";
import { flowNotes, type RunFlow } from "./flowNotes";
import { runFlows } from "./runFlows";
import { type Fan, type SolvedTable, solveRuns } from "./solveRuns";
import { staticSuction } from "./staticSuction";

/** The answer of SOLVE: a header row, a row per row of the table, and the fan. */
export function flowTable(runs: RunsTable, fan: Fan, system: UnitSystem): Value[][] {
  const solved = solveRuns(runs, fan);
  const rows = Array.from({ length: solved.table.rows }, () => blankRow(solveColumns));
  const flows = runFlows(solved);
  const { network, solution } = solved;
  const atJunctions = lossesAtJunctions(network, solution.airflow, meetingsOf(network, fan.density));
  solved.table.runs.forEach((entry, index) => {
    const flow = { ...flows[index]!, atJunction: flows[index]!.airflow === 0 ? 0 : atJunctions[index]! };
    rows[entry.row] = runRow(solved, flow, index, fan.density, system);
  });
  return [headerRow(solveColumns, system), ...rows, fanRow(solved, system)];
}

function runRow(
  solved: SolvedTable,
  flow: RunFlow & { readonly atJunction: number }, // [Pa] 0 where nothing flows
  index: number,
  density: number,
  system: UnitSystem,
): Value[] {
  const entry = solved.table.runs[index]!;
  const { run } = entry;
  const air = surroundings(density);
  const discharge = run.side === "discharge";
  const losses = discharge
    ? dischargeLoss(solved.network, index, flow.airflow, air)
    : runLoss(run, Math.abs(flow.airflow), air.hoseRoughness, density);
  const entryLoss = flow.end ? solved.solution.suction[index]! : 0; // an open end has no other deficit than its entry loss
  const along = Math.sign(flow.airflow) * (losses.friction + losses.fittings + losses.device); // against air that comes back
  const loss = along + entryLoss + flow.atJunction;
  return answerRow(
    solveColumns,
    {
      run: run.name,
      airflow: flow.airflow,
      velocity: flow.velocity,
      staticSuction: staticSuction(solved, flow, index, density),
      leak: discharge ? null : flow.leak,
      runLoss: loss,
      gate: run.gate === "none" ? null : run.gate,
      note: flowNotes(entry, flow, system),
    },
    system,
  );
}

function fanRow({ solution }: SolvedTable, system: UnitSystem): Value[] {
  const leaks = totalLeak(solution.leak);
  return answerRow(
    solveColumns,
    {
      run: "Fan",
      airflow: solution.fanAirflow,
      staticSuction: solution.fanPressure,
      leak: leaks,
      note: fanNote(solution, leaks, system),
    },
    system,
  );
}

export const totalLeak = (leak: Float64Array): number => leak.reduce((sum, one) => sum + one, 0);

function fanNote(solution: SolvedTable["solution"], leaks: number, system: UnitSystem): string {
  if (solution.fanAirflow === 0) return sayNote("allShut");
  const percent = Math.max(0, Number(((leaks / solution.fanAirflow) * 100).toPrecision(3))); // air may blow out through leaks, too
  const lost = leaks === 0 ? sayNote("noLeak") : sayNote("lost", { percent }); // a system of which no leak is known is not tight
  if (solution.crossings === 1) return lost;
  const { crossings: count, fromRest } = solution;
  const airflow = inWords(solution.fanAirflow, "airflow", system);
  const less = inWords(fromRest, "airflow", system);
  const two = fromRest < solution.fanAirflow;
  return joinNotes([lost, two ? sayNote("twoStable", { count, airflow, less }) : sayNote("hump", { count, airflow })]);
}
