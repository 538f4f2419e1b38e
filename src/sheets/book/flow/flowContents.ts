import type { UnitSystem } from "../../../reference/quantities";
import type { Scenario } from "../../demo/workshop";
import { workshops } from "../../demo/workshops";

export interface FlowContents {
  readonly gates: readonly string[]; // "shut planer" each
  readonly hoods: number | null; // how many there are; null where nobody knows yet
  readonly gated: readonly string[]; // the runs that head the scenarios
  readonly scenarios: readonly Scenario[];
  readonly tryIt: string | null;
}

export const emptyFlow: FlowContents = { gates: [], hoods: null, gated: [], scenarios: [], tryIt: null };

export function exampleFlow(units: UnitSystem): FlowContents {
  const { runs, scenarios, tries } = workshops[units];
  const gated = runs.filter(({ Gate: gate }) => gate !== undefined);
  return {
    gates: gated.map(({ Run: name, Gate: gate }) => `${String(gate)} ${String(name)}`),
    hoods: runs.filter(({ Hood: hood }) => hood !== undefined).length,
    gated: gated.map(({ Run: name }) => String(name)),
    scenarios,
    tryIt: tries.flow,
  };
}
