import { exampleCurve, exampleRuns, exampleScenarios } from "../exampleTables";
import type { Formula, Guide } from "../guide";
import { rememberingAnswers } from "../remember";
import { answerSizes } from "../sizesTable/answerSizes";

const remember = rememberingAnswers();

/**
 * Which diameters to buy so that each scenario works at least cost: a row per run (in, ft, fpm; SI: mm, m, m/s), then how sure.
 * @customfunction SIZES
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve As for SOLVE, or a column of pressures for each of several fans; blank: sizes by velocity, and what the fan must give
 * @param scenarios Sets of open gates, as for SCENARIOS; each must work; blank: each machine alone and any two (of over eight: alone)
 * @param [stock] Diameters that one can buy, in (SI: mm), and beside them the price of a foot (SI: metre); the trade's when left out
 * @param [margin] How much more than needed each need must get, in %; 15 when left out, "none" for none
 * @param [keep] Names of runs whose diameter stays, between ; or ,; runs with a device always keep theirs
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @param [fastest] Greatest velocity where a diameter is chosen, above 0 fpm (SI: m/s), less the margin; none when left out
 * @returns table
 */
export function sizes(
  runs: unknown[][],
  curve: unknown[][],
  scenarios: unknown[][],
  stock?: unknown[][],
  margin?: unknown[][],
  keep?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
  fastest?: unknown[][],
): unknown[][] {
  return answerSizes(remember, { runs, curve, scenarios, stock, margin, keep, density, units, fastest });
}

export const guide: Guide = {
  maths: "SOLVE for each scenario as judge of many choices of sizes; branch and bound over the tree",
  source: "todiniPilati1988",
  basis: "from memory",
  limits:
    "It knows nothing of head room, fittings in stock, resale, or how unsure the inputs are. The cell stops after a second or a few and says what is proved; where a branch costs by the airflows nothing is. A wider run never joins a narrower one.",
  cautions: ["metal with wood", "capture"],
  also: ["which pipe size", "pipe diameter to buy", "duct size"],
  page: { file: "sizes.html", title: "How SIZES searches" },
  example: { asks: "Which sizes serve the saw alone and both", args: [exampleRuns, exampleCurve, exampleScenarios] },
};

export const formula: Formula = {
  tex: [
    "\\min \\sum_i c_i(D_i) \\quad \\text{so that} \\quad Q_\\text{hood} \\ge (1 + m)\\, Q_\\text{wanted}, \\quad V_\\text{run} \\ge (1 + m)\\, V_\\text{dust},\\quad (1 + m)\\, V_\\text{run} \\le V_\\text{fastest}",
  ],
  letters: {
    "c_i(D_i)": "price of run i in its diameter; length times diameter where no price is told",
    m: "the margin",
    "Q_\\text{hood}": "airflow at each open hood in each scenario (see SOLVE)",
    "V_\\text{run}": "velocity in each run that carries dust, in each scenario that feeds it",
    "V_\\text{fastest}": "greatest velocity, if one is given, in each run whose diameter is chosen",
  },
};
