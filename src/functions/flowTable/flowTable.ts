import { velocityPressure } from "../../core/air/velocityPressure";
import { runLoss } from "../../core/network/runLoss";
import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";
import type { Matrix } from "../cells";
import { inUnit } from "../runsTable/inUnit";
import { surroundings } from "../runsTable/surroundings";
import { flowNotes, type RunFlow } from "./flowNotes";
import { runFlows } from "./runFlows";
import { type Fan, type SolvedTable, solveRuns } from "./solveRuns";

type Value = string | number;

const HEADERS: readonly (readonly [string, Quantity | null])[] = [
  ["Run", null],
  ["Airflow", "airflow"],
  ["Velocity", "velocity"],
  ["Static suction", "pressure"],
  ["Leak", "airflow"],
  ["Run loss", "pressure"],
  ["Gate", null],
  ["Note", null],
];

/** The answer of SOLVE: a header row, a row per row of the table, and the fan. */
export function flowTable(runs: Matrix, fan: Fan, system: UnitSystem): Value[][] {
  const solved = solveRuns(runs, fan, system);
  const rows: Value[][] = Array.from({ length: solved.table.rows }, () => new Array<Value>(HEADERS.length).fill(""));
  const flows = runFlows(solved);
  solved.table.runs.forEach((entry, index) => {
    rows[entry.row] = runRow(solved, flows[index]!, index, fan.density, system);
  });
  const header = HEADERS.map(([name, quantity]) =>
    quantity === null ? name : `${name} (${unitOf(quantity, system).label})`,
  );
  return [header, ...rows, fanRow(solved, system)];
}

const shown = (value: number, quantity: Quantity, system: UnitSystem): number =>
  fromSI(value, unitOf(quantity, system));

/** Static suction stands at the upstream end, where a tap behind the hood and the run's own leak feel it. */
function runRow(solved: SolvedTable, flow: RunFlow, index: number, density: number, system: UnitSystem): Value[] {
  const entry = solved.table.runs[index]!;
  const { run } = entry;
  const losses = runLoss(run, Math.abs(flow.airflow), surroundings(density).hoseRoughness, density);
  const entryLoss = flow.end ? solved.solution.suction[index]! : 0; // an open end has no other deficit than its entry loss
  const loss = losses.friction + losses.fittings + losses.device + entryLoss;
  const suction = solved.solution.suction[index]! + velocityPressure(Math.abs(flow.velocity), density);
  const discharge = run.side === "discharge";
  return [
    run.name,
    shown(flow.airflow, "airflow", system),
    shown(flow.velocity, "velocity", system),
    discharge || flow.beyondShut ? "" : shown(suction, "pressure", system),
    discharge ? "" : shown(flow.leak, "airflow", system),
    shown(loss, "pressure", system),
    run.gate === "none" ? "" : run.gate,
    flowNotes(entry, flow, system),
  ];
}

function fanRow({ solution }: SolvedTable, system: UnitSystem): Value[] {
  const leaks = totalLeak(solution.leak);
  const airflow = shown(solution.fanAirflow, "airflow", system);
  const pressure = shown(solution.fanPressure, "pressure", system);
  return ["Fan", airflow, "", pressure, shown(leaks, "airflow", system), "", "", fanNote(solution, leaks, system)];
}

export const totalLeak = (leak: Float64Array): number => leak.reduce((sum, one) => sum + one, 0);

function fanNote(solution: SolvedTable["solution"], leaks: number, system: UnitSystem): string {
  if (solution.fanAirflow === 0) return "everything is shut: no air moves";
  const share = Number(((leaks / solution.fanAirflow) * 100).toPrecision(3));
  const lost = `${share} % of the air is lost to leaks`;
  if (solution.crossings === 1) return lost;
  const at = inUnit(solution.fanAirflow, "airflow", system);
  return `${lost}; the curve has a hump: fan and system meet at ${solution.crossings} points, ${at} is the stable one`;
}
