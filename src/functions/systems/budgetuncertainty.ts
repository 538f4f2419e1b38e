import { readDensity } from "../arguments";
import { toMatrix } from "../cells";
import { exampleRuns } from "../exampleTables";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { rememberingAnswers } from "../remember";
import { sharedRuns } from "../runsTable/sharedRuns";
import { budgetUncertainty } from "../uncertaintyTable/budgetUncertainty";
import { readErrors } from "../uncertaintyTable/readErrors";

const remember = rememberingAnswers();

/**
 * What the hoods ask of a fan, as BUDGET adds it up, with its ±: airflow and fan static pressure (cfm, in.w.g.; m³/h, Pa).
 * @customfunction BUDGETUNCERTAINTY
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param [errors] Two columns: what (as in the table input errors), and how far off in % (standard deviation); usual ones when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function budgetuncertainty(
  runs: unknown[][],
  errors?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return inHost(units, (system) => {
    const air = readDensity(density, system);
    const deviations = readErrors(errors);
    return remember([toMatrix(runs), [...deviations], air, system], () =>
      budgetUncertainty(sharedRuns(runs, system).runs(null), air, deviations, system),
    );
  });
}

export const guide: Guide = {
  maths:
    "BUDGET's airflow and pressure with all inputs drawn anew 800 times; ± is half of the range of the middle 19 of 20",
  source: "jcgm101",
  basis: "from memory",
  limits:
    "What a fan must give, as far as pipe, hose, fittings, entries, devices, leaks and diameters are known; the fan's own errors are not in it. The airflow that the hoods ask for is taken as wished, so its ± is that of the leaks. Says nothing of a slip in the table. The draws are the same each time.",
  cautions: ["no measurement", "capture"],
  also: ["accuracy", "plus or minus", "margin", "which fan"],
  example: { asks: "How sure what two hoods and a main ask of a fan is", args: [exampleRuns] },
};

export const formula: Formula = {
  tex: ["\\pm = \\tfrac{1}{2}\\left(y_{97.5\\,\\%} - y_{2.5\\,\\%}\\right)"],
  letters: { y: "the airflow or pressure of a design pass with drawn inputs" },
};
