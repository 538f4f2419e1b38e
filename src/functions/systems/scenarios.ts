import { toMatrix } from "../cells";
import { exampleCurve, exampleRuns, exampleScenarios } from "../exampleTables";
import { scenarioTable } from "../flowTable/scenarioTable";
import { onFan } from "../flowTable/onFan";
import { ALONG_A_RUN, AT_A_HOOD, AT_A_LEAK } from "../formulas";
import type { Formula, Guide } from "../guide";
import { NETWORK_LETTERS } from "../letters";
import { rememberingAnswers } from "../remember";

const remember = rememberingAnswers();

/**
 * What each open hood gets, scenario by scenario: airflow and velocity, fan point, slowest run (cfm, fpm; m³/h, m/s).
 * @customfunction SCENARIOS
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param scenarios A row each: the open runs in one cell between ; or , (a name before it), or a column per run with marks
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function scenarios(
  runs: unknown[][],
  curve: unknown[][],
  scenarios: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  const given = { runs, curve, asks: scenarios, density, units };
  return onFan(remember, given, ({ table, fan, system }) => scenarioTable(table, fan, toMatrix(scenarios), system));
}

export const guide: Guide = {
  maths: "SOLVE for each set of open gates",
  source: "todiniPilati1988",
  basis: "from memory",
  limits: "Shut gates leak by what the table says of them.",
  cautions: ["metal with wood", "capture"],
  also: ["blast gates", "two machines at once"],
  example: { asks: "One gate open, then both", args: [exampleRuns, exampleCurve, exampleScenarios] },
};

export const formula: Formula = {
  tex: [ALONG_A_RUN, AT_A_HOOD, AT_A_LEAK],
  letters: NETWORK_LETTERS,
};
