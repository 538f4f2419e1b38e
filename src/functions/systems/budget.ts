import { readDensity } from "../arguments";
import { budgetTable } from "../budgetTable/budgetTable";
import { exampleRuns } from "../exampleTables";
import type { Formula, Guide } from "../guide";
import { inHost } from "../inHost";
import { JUNCTION_LOSS, LOSS_COEFFICIENT, VELOCITY_PRESSURE } from "../letters";
import { sharedRuns } from "../runsTable/sharedRuns";

/**
 * Design pass over a table of runs: one row per run, last row the fan's airflow and static pressure (cfm, in.w.g.; m³/h, Pa).
 * @customfunction BUDGET
 * @param runs Table with headers Run, To, Diameter and any of Length, Material, Flex, Fittings, Hood, Airflow, Gate, Leak ...
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI": of the table and of the answer
 * @returns table
 */
export function budget(runs: unknown[][], density?: unknown[][], units?: unknown[][]): unknown[][] {
  return inHost(units, (system) => {
    const air = readDensity(density, system);
    return budgetTable(sharedRuns(runs, system), air, system);
  });
}

export const guide: Guide = {
  maths: "Airflows add up towards the fan; each run's losses at its airflow; the costliest path sets the pressure",
  source: "acgihMemory",
  basis: "from memory",
  limits:
    "What hoods ask for, not what flows: a fan knows nothing of wishes. See SOLVE. Fittings counts the hood's entry in. Losses are of total pressure, also at a junction: a branch and the run straight on lose by the airflows and sizes that meet (below 0 where one draws the other along); write plain behind a branch for K by angle alone. Air of parts that ask for none is left out there. The older practice adds static pressures, so its sums differ. The end after the fan counts beyond what the fan's static pressure leaves out. Values from memory count like any other: Check names them. A wrong row is an error, and so is what waits for it; other rows compute.",
  cautions: ["metal with wood", "plastic static", "capture"],
  also: ["static pressure", "system loss", "duct design", "cyclone"],
  example: { asks: "What two hoods and a main ask of a fan", args: [exampleRuns] },
};

export const formula: Formula = {
  tex: [
    "P_\\text{down} = P_\\text{up} + \\Delta p_\\text{friction} + \\sum K\\,p_v + \\Delta p_\\text{device} + \\Delta p_\\text{junction}",
    "P_\\text{up} = \\max_\\text{joining} P_\\text{down}, \\qquad Q_\\text{balanced} = Q\\sqrt{P_\\text{governing}/P_\\text{path}}",
  ],
  letters: {
    P: "total pressure below the room's [Pa]",
    Q: "airflow that the path was asked for [m³/s]",
    p_v: VELOCITY_PRESSURE,
    K: LOSS_COEFFICIENT,
    "\\Delta p_\\text{junction}": JUNCTION_LOSS,
  },
};
