import { exampleCurve, exampleRuns } from "../exampleTables";
import { onFan } from "../flowTable/onFan";
import type { Formula, Guide } from "../guide";
import { rememberingAnswers } from "../remember";
import { readErrors } from "../uncertaintyTable/readErrors";
import { uncertaintyTable } from "../uncertaintyTable/uncertaintyTable";

const remember = rememberingAnswers();

/**
 * How sure SOLVE's answers are: rows as SOLVE has them with ± (cfm, fpm, in.w.g.; m³/h, m/s, Pa) and what it mostly comes from.
 * @customfunction UNCERTAINTY
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [errors] Two columns: what (as in the table input errors), and how far off in % (standard deviation); usual ones when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function uncertainty(
  runs: unknown[][],
  curve: unknown[][],
  open?: unknown[][],
  errors?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  const given = { runs, curve, open, asks: errors, density, units };
  return onFan(remember, given, ({ table, open, fan, system }) =>
    uncertaintyTable(table.runs(open), fan, readErrors(errors), system),
  );
}

export const guide: Guide = {
  maths: "u² = Σ (∂y/∂xᵢ)² uᵢ², and ± = 2 u",
  source: "jcgm100",
  basis: "from memory",
  limits:
    "Errors are independent standard deviations, judgements where you measured nothing; ± is two of them together, 19 of 20. A leak's is times or over. Says nothing of a slip in the table.",
  cautions: ["no measurement", "capture"],
  also: ["accuracy", "plus or minus", "error", "tolerance"],
  example: { asks: "How sure the same ducts on the invented fan are", args: [exampleRuns, exampleCurve] },
};

export const formula: Formula = {
  tex: ["u(y)^2 = \\sum_i \\left(\\frac{\\partial y}{\\partial x_i}\\right)^2 u(x_i)^2, \\qquad \\pm = 2\\,u(y)"],
  letters: {
    y: "an answer of SOLVE",
    x_i: "logarithm of the factor by which an input is off: the fan's pressure and speed, friction of pipe and hose, each run's fittings, what its junction costs it, its entry, device, leak and diameter",
    u: "standard deviation",
  },
};
