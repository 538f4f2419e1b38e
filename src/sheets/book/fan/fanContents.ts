import type { UnitSystem } from "../../../reference/quantities";
import { workshops } from "../../demo/workshops";

export interface FanContents {
  readonly curve: readonly (readonly [airflow: number, pressure: number])[];
  readonly source: string | null;
}

export const emptyFan: FanContents = { curve: [], source: null };

export const exampleFan = (units: UnitSystem): FanContents => ({
  curve: workshops[units].curve,
  source: "an invented fan: type the points of your own over it",
});
