import type { UnitSystem } from "../../../reference/quantities";
import { DEFAULT_DUST } from "../../../reference/transport";
import { workshops } from "../../demo/workshops";

/** What fills the sheet Start. A temperature always stands there, since some hosts send a blank as 0, which is a temperature. */
export interface StartContents {
  readonly of: string | null; // whose budget it is; null where nobody's yet
  readonly invented: string | null; // the sentence that says so
  readonly temperature: number;
  readonly altitude: number;
  readonly dust: string;
}

const USUAL_TEMPERATURE: Readonly<Record<UnitSystem, number>> = { IP: 70, SI: 20 }; // °F, °C

export const emptyStart = (units: UnitSystem): StartContents => ({
  of: null,
  invented: null,
  temperature: USUAL_TEMPERATURE[units],
  altitude: 0,
  dust: DEFAULT_DUST,
});

export function exampleStart(units: UnitSystem): StartContents {
  const { name, invented, temperature, altitude, dust } = workshops[units];
  return { of: name, invented, temperature, altitude, dust };
}
