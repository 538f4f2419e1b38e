import type { UnitSystem } from "../../../reference/quantities";
import type { WorkshopRun } from "../../demo/workshop";
import { workshops } from "../../demo/workshops";

export interface RunsContents {
  readonly runs: readonly WorkshopRun[];
  readonly tryIt: string | null;
}

export const emptyRuns: RunsContents = { runs: [], tryIt: null };

export const exampleRuns = (units: UnitSystem): RunsContents => ({
  runs: workshops[units].runs,
  tryIt: workshops[units].tries.runs,
});
