import type { UnitSystem } from "../../reference/quantities";
import { readDensity } from "../arguments";
import type { Answered } from "../cellErrors";
import { inHost } from "../inHost";
import { type Calibration, calibrated, type Given } from "./calibration";

type AsHanded = Omit<Given, "density" | "system"> & { readonly density: unknown; readonly units: unknown };

/** Reads what CALIBRATE and its companions take, and answers. */
export const onReadings = (
  { density, units, ...given }: AsHanded,
  answer: (calibration: Calibration, system: UnitSystem) => (string | number)[][],
): Answered[][] =>
  inHost(units, (system) => answer(calibrated({ ...given, density: readDensity(density, system), system }), system));
