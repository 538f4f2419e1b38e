import { toMatrix } from "../cells";
import { exampleCurve, exampleRuns } from "../exampleTables";
import { onFan } from "../flowTable/onFan";
import type { Formula, Guide } from "../guide";
import { rememberingAnswers } from "../remember";
import { gainUncertainty } from "../uncertaintyTable/gainUncertainty";
import { readErrors } from "../uncertaintyTable/readErrors";

const remember = rememberingAnswers();

/**
 * How sure each gain of GAINS is: run, change, airflow gained and its ± (cfm; SI: m³/h), and what it is mostly unsure by.
 * @customfunction GAINUNCERTAINTY
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param hood Name of the run whose hood should get more air
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [errors] Two columns: what (as in the table input errors), and how far off in % (standard deviation); usual ones when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function gainuncertainty(
  runs: unknown[][],
  curve: unknown[][],
  hood: unknown[][],
  open?: unknown[][],
  errors?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  const given = { runs, curve, open, asks: [...toMatrix(hood), ...toMatrix(errors)], density, units };
  return onFan(remember, given, ({ table, open, fan, system }) =>
    gainUncertainty(table.runs(open), fan, hood, readErrors(errors), system),
  );
}

export const guide: Guide = {
  maths: "u² = Σ (∂(Q after − Q now)/∂xᵢ)² uᵢ², and ± = 2 u",
  source: "jcgm100",
  basis: "from memory",
  limits:
    "An input is off by the same factor before and after, so a gain is surer than either airflow. A sealed leak's gain is told as times or over. The change itself is taken to be done as told.",
  cautions: ["no measurement", "power off"],
  also: ["which improvement", "plus or minus", "worth it"],
  example: { asks: "How sure the gains at the saw are", args: [exampleRuns, exampleCurve, "saw"] },
};

export const formula: Formula = {
  tex: [
    "u(\\Delta Q)^2 = \\sum_i \\left(\\frac{\\partial Q_\\text{after}}{\\partial x_i} - \\frac{\\partial Q_\\text{now}}{\\partial x_i}\\right)^2 u(x_i)^2, \\qquad \\pm = 2\\,u",
  ],
  letters: { x_i: "logarithm of the factor by which an input is off, as in UNCERTAINTY", u: "standard deviation" },
};
