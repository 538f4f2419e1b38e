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
  readonly gates: readonly LoggedGate[];
}

export const emptyLeaks: LeaksContents = { invented: null, head: null, gates: [] };

const INVENTED = "Invented for trying out: no such gate was measured.";

/** Two gates wait to be mended; one reading says the opposite of mending, and one difference is too small to tell. */
const inchPound: LeaksContents = {
  invented: INVENTED,
  head: 2.75,
  gates: [
    gate("band saw", 4, "open bare slot", 2.8, 20.5, { after: 1.2, cost: 2, minutes: 3 }),
    gate("planer", 5, "open flapped slot", 3.4, 3.1, { after: 1.4, cost: 1, minutes: 2 }),
    gate("drum sander", 5, "loose collar", 2.2, 13, { after: 15.5, cost: 1, minutes: 4 }),
    gate("router table", 4, "open bare slot", 2.9, 21.5),
    gate("bench hood", 4, "shut packed", 3.6, 9.8),
  ],
};

const metric: LeaksContents = {
  invented: INVENTED,
  head: 70,
  gates: [
    gate("resaw", 100, "loose collar", 1500, 23, { after: 5.5, cost: 1, minutes: 2 }),
    gate("thickness sander", 125, "open flapped slot", 1300, 4.5, { after: 6, cost: 4, minutes: 9 }),
    gate("sanding table", 140, "open bare slot", 1100, 58, { after: 3.5, cost: 3, minutes: 5 }),
    gate("neck router", 80, "open bare slot", 1200, 36),
    gate("glue bench", 100, "shut wrong side", 1600, 14),
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
