import { designPass, type SystemBudget } from "../../src/core/network/designPass";
import type { Run } from "../../src/core/network/network";
import { buildNetwork } from "../../src/core/network/tree";

/** A run that is nothing but a piece of 100 mm duct without length, until facts are given. */
export const makeRun = (name: string, to: string, facts: Partial<Run> = {}): Run => ({
  name,
  label: `run "${name}"`,
  to,
  side: "suction",
  diameter: 0.1,
  length: 0,
  roughness: 0,
  hoseLength: 0,
  hoseTimes: 1,
  hoseRoughness: null,
  coefficient: 0,
  mitreCoefficient: 0,
  exitCoefficient: 0,
  branch: null,
  junctionFactor: 1,
  hood: null,
  wantedAirflow: 0,
  gate: "none",
  leakArea: 0,
  device: null,
  ...facts,
});

/** Air, hose and pipe end of the tests, all chosen by us. */
export const AIR = { density: 1.2, hoseRoughness: 0.003, plainEnd: 0.93 };

/** The design pass over runs, which are found again by name. */
export function budgetOf(
  runs: readonly Run[],
  air = AIR,
): SystemBudget & { of: (name: string) => SystemBudget["runs"][number] } {
  const budget = designPass(buildNetwork(runs), air);
  return { ...budget, of: (name) => budget.runs[runs.findIndex((run) => run.name === name)]! };
}
