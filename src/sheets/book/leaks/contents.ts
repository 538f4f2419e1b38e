import type { UnitSystem } from "../../../reference/quantities";

/** One gate of the leak log; what is left out is not measured or not mended yet. */
export interface LoggedGate {
  readonly gate: string; // the name of a run of the sheet Flow, where it stands there
  readonly diameter: number; // in, mm
  readonly condition: string; // as found, a name of the table gates
  readonly suction: number; // in.w.g., Pa, while measuring
  readonly before: number; // cfm, m³/h
  readonly after?: number;
  readonly cost?: number;
  readonly minutes?: number;
}

/** What the sheet of leaks is filled with, in the units of its frame. */
export interface LeaksContents {
  readonly invented: string | null; // the sentence that says so
  readonly head: number | null; // diameter of the meter's head
  readonly repeats: readonly number[]; // one leak read again and again, cfm, m³/h
  readonly gates: readonly LoggedGate[];
}

export const emptyLeaks: LeaksContents = { invented: null, head: null, repeats: [], gates: [] };

const INVENTED = "Invented for trying out: no such gate was measured.";

/** Two gates wait to be mended; one reading says the opposite of mending, and one difference is too small to tell. */
const inchPound: LeaksContents = {
  invented: INVENTED,
  head: 2.75,
  repeats: [13.4, 12.1, 13.9, 12.5, 13],
  gates: [
    gate("planer", 5, "shut wrong side", 3.4, 26, { after: 2.5, cost: 6, minutes: 12 }),
    gate("band saw", 4, "open flapped slot", 2.8, 3.1, { after: 1.4, cost: 3, minutes: 7 }),
    gate("drum sander", 5, "loose collar", 2.2, 13, { after: 15.5, cost: 4, minutes: 15 }),
    gate("bench hood", 6, "open bare slot", 2.4, 17),
    gate("router table", 4, "shut packed", 3.6, 9.8),
  ],
};

const metric: LeaksContents = {
  invented: INVENTED,
  head: 70,
  repeats: [23, 21.6, 24.1, 22.2, 22.6],
  gates: [
    gate("resaw", 100, "loose collar", 1500, 23, { after: 5.5, cost: 5, minutes: 11 }),
    gate("thickness sander", 125, "open flapped slot", 1300, 4.5, { after: 6, cost: 4, minutes: 9 }),
    gate("sanding table", 140, "shut wrong side", 1100, 62, { after: 7.5, cost: 8, minutes: 25 }),
    gate("neck router", 80, "shut packed", 1200, 19),
    gate("glue bench", 160, "open bare slot", 1600, 44),
  ],
};

export const exampleLeaks = (units: UnitSystem): LeaksContents => (units === "SI" ? metric : inchPound);

function gate(
  name: string,
  diameter: number,
  condition: string,
  suction: number,
  before: number,
  mended: Pick<LoggedGate, "after" | "cost" | "minutes"> = {},
): LoggedGate {
  return { gate: name, diameter, condition, suction, before, ...mended };
}
