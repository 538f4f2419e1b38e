import { exampleCurve, exampleRuns } from "../exampleTables";
import { flowTable } from "../flowTable/flowTable";
import { onFan } from "../flowTable/onFan";
import { ALONG_A_RUN, AT_A_HOOD, AT_A_LEAK } from "../formulas";
import type { Formula, Guide } from "../guide";
import { NETWORK_LETTERS } from "../letters";
import { rememberingAnswers } from "../remember";

const remember = rememberingAnswers();

/**
 * What really flows with a fan: a row per run, last row the fan's airflow, pressure and leaks (cfm, in.w.g.; m³/h, Pa).
 * @customfunction SOLVE
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI": of the table, the curve and the answer
 * @returns table
 */
export function solve(
  runs: unknown[][],
  curve: unknown[][],
  open?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  const given = { runs, curve, open, density, units };
  return onFan(remember, given, ({ table, open, fan, system }) => flowTable(table.runs(open), fan, system));
}

export const guide: Guide = {
  maths: "Flows and suctions at which every junction and the fan agree, leaks included",
  source: "todiniPilati1988",
  basis: "from memory",
  limits:
    "One fan, no loops. A branch, and the run straight on beside it, lose by the airflows and sizes that meet; plain behind a branch keeps K by angle alone. The end after the fan counts beyond the velocity pressure at the fan's outlet, which static pressure leaves out. As good as its coefficients and the fan's curve.",
  cautions: ["metal with wood", "flue draught", "capture"],
  also: ["cfm at each machine", "blast gates", "system"],
  example: { asks: "The same ducts on the invented fan", args: [exampleRuns, exampleCurve] },
};

export const formula: Formula = {
  tex: [ALONG_A_RUN, AT_A_HOOD, AT_A_LEAK, "p(Q_\\text{fan}) = P_\\text{down,last} + \\Delta p_\\text{discharge}"],
  letters: NETWORK_LETTERS,
};
