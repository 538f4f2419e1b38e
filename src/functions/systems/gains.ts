import { exampleCurve, exampleRuns } from "../exampleTables";
import { readChoice, singleCell } from "../arguments";
import { toMatrix } from "../cells";
import { gainTable, goals } from "../flowTable/gainTable";
import { onFan } from "../flowTable/onFan";
import type { Formula, Guide } from "../guide";
import { rememberingAnswers } from "../remember";

const remember = rememberingAnswers();

/**
 * What one change would give at a hood, best first: run, change, airflow gained, new velocity (cfm, fpm; SI: m³/h, m/s).
 * @customfunction GAINS
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param hood Name of the run whose hood should get more air
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @param [goal] "air" (default): most air first. "work": first what carries the dust, then air for a hood that has too little
 * @returns table
 */
export function gains(
  runs: unknown[][],
  curve: unknown[][],
  hood: unknown[][],
  open?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
  goal?: unknown[][],
): unknown[][] {
  const given = { runs, curve, open, asks: [...toMatrix(hood), ...toMatrix(goal)], density, units };
  return onFan(remember, given, ({ table, open, fan, system }) =>
    gainTable(table.runs(open), fan, hood, readChoice("goal", singleCell("goal", goal), goals), system),
  );
}

export const guide: Guide = {
  maths: "SOLVE again with one change at a time",
  source: "todiniPilati1988",
  basis: "from memory",
  limits: "One change at a time: two together do not give the sum.",
  cautions: ["power off", "tape and card"],
  also: ["improve", "more airflow", "more suction"],
  example: { asks: "What would help the saw", args: [exampleRuns, exampleCurve, "saw"] },
};

export const formula: Formula = {
  tex: ["\\Delta Q_\\text{hood} = Q_\\text{hood}(\\text{one change}) - Q_\\text{hood}(\\text{as it is})"],
  letters: { "Q_\\text{hood}": "airflow at the hood, each time solved as its own network (see SOLVE)" },
};
