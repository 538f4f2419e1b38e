import { toMatrix } from "../cells";
import { exampleCurve, exampleRuns } from "../exampleTables";
import { leakGainTable } from "../flowTable/leakGainTable";
import { onFan } from "../flowTable/onFan";
import { AT_A_LEAK } from "../formulas";
import type { Formula, Guide } from "../guide";
import { AIR, DISCHARGE, FLOW, OPENING, VELOCITY_PRESSURE } from "../letters";
import { rememberingAnswers } from "../remember";

const remember = rememberingAnswers();

/**
 * What the open hoods together get with each leak as read before and after mending: a row per reading (cfm; SI: m³/h).
 * @customfunction LEAKGAINS
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param gates Names of the runs at which leaks were read, one cell each
 * @param before Leaks as found, cfm (SI: m³/h), beside them; "still" for no leak
 * @param after Leaks once mended, cfm (SI: m³/h), likewise
 * @param suction Static suction there while measuring, in.w.g. (SI: Pa), above 0; "as solved" for what SOLVE has there
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @returns table
 */
export function leakgains(
  runs: unknown[][],
  curve: unknown[][],
  gates: unknown[][],
  before: unknown[][],
  after: unknown[][],
  suction: unknown[][],
  open?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  const log = { gates, before, after, suction };
  const asks = Object.values(log).flatMap((column) => {
    const cells = toMatrix(column);
    return [[cells.length], ...cells];
  });
  return onFan(remember, { runs, curve, open, asks, density, units }, ({ table, open, fan, system }) =>
    leakGainTable(table.runs(open), fan, log, system),
  );
}

export const guide: Guide = {
  maths: "SOLVE with the run's leak as read before, and as read after",
  source: "todiniPilati1988",
  basis: "from memory",
  limits:
    "One reading at a time, all other leaks as the table has them. A reading stands for the whole leak of its run, at its upstream end, whatever the table has there. A suction as solved is that of the table as it is, and the note says how much.",
  cautions: ["power off", "vane over a slot", "tape and card"],
  also: ["mended leak", "sealed gate", "what sealing gives"],
  example: { asks: "The saw's gate, mended", args: [exampleRuns, exampleCurve, "saw", "30", "5", "3"] },
};

export const formula: Formula = {
  tex: [AT_A_LEAK, "\\Delta Q = \\sum Q_\\text{hood}(A_\\text{after}) - \\sum Q_\\text{hood}(A_\\text{before})"],
  letters: {
    A: OPENING,
    C_d: DISCHARGE,
    "\\rho": AIR,
    Q: FLOW,
    P: "total pressure below the room's [Pa], at the run's upstream end",
    p_v: VELOCITY_PRESSURE,
    "Q_\\text{hood}": "airflow at an open hood, each time solved as its own network (see SOLVE)",
  },
};
