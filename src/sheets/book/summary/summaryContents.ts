import type { UnitSystem } from "../../../reference/quantities";
import { workshops } from "../../demo/workshops";

export interface SummaryContents {
  readonly workshop: string | null;
  readonly numbers: string | null; // where the numbers come from
}

export const emptySummary: SummaryContents = { workshop: null, numbers: null };

export const exampleSummary = (units: UnitSystem): SummaryContents => ({
  workshop: workshops[units].name,
  numbers: "invented for trying out",
});
