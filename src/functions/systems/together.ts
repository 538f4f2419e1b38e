import { exampleCurve, exampleRuns } from "../exampleTables";
import { onFan } from "../flowTable/onFan";
import { togetherTable } from "../flowTable/togetherTable";
import { ALONG_A_RUN, AT_A_HOOD, AT_A_LEAK } from "../formulas";
import type { Formula, Guide } from "../guide";
import { NETWORK_LETTERS } from "../letters";
import { rememberingAnswers } from "../remember";

const remember = rememberingAnswers();

/**
 * Which gates may be open together: a row per set, worst served hood, slowest run, verdict (cfm, fpm; SI: m³/h, m/s).
 * @customfunction TOGETHER
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param [most] How many gates of hoods are open at once at most, 2 when left out; at most 500 sets are tried
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function together(
  runs: unknown[][],
  curve: unknown[][],
  most?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  const given = { runs, curve, asks: most, density, units };
  return onFan(remember, given, ({ table, fan, system }) => togetherTable(table, fan, most, system));
}

export const guide: Guide = {
  maths: "SOLVE for every set of up to so many open gates",
  source: "todiniPilati1988",
  basis: "from memory",
  limits:
    "The first gate on the way of each hood is tried; one further down is open where the air of an open hood passes it. A run with a device, or fed only through one, is not held to its dust's velocity: the air there is taken to be clean.",
  cautions: ["metal with wood", "capture"],
  also: ["which machines together", "two machines at once", "which gates open"],
  example: { asks: "Which machines may run at once", args: [exampleRuns, exampleCurve] },
};

export const formula: Formula = {
  tex: [ALONG_A_RUN, AT_A_HOOD, AT_A_LEAK],
  letters: NETWORK_LETTERS,
};
