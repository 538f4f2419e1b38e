import type { UnitSystem } from "../../../reference/quantities";
import type { Scenario } from "../../demo/workshop";
import { workshops } from "../../demo/workshops";

export interface FlowContents {
  readonly gates: readonly (string | null)[]; // run by run, in the order of the runs table
  readonly hoods: number | null; // how many there are; null where nobody knows yet
  readonly scenarios: readonly Scenario[];
  readonly tryIt: string | null;
}

export const emptyFlow: FlowContents = { gates: [], hoods: null, scenarios: [], tryIt: null };

export function exampleFlow(units: UnitSystem): FlowContents {
  const { runs, scenarios, tries } = workshops[units];
  return {
    gates: runs.map(({ Gate: gate }) => (gate === undefined ? null : String(gate))),
    hoods: runs.filter(({ Hood: hood }) => hood !== undefined).length,
    scenarios,
    tryIt: tries.flow,
  };
}
