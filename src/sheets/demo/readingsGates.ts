/** One gate of the leak log; what is left out is not measured or not mended yet. */
export interface LoggedGate {
  readonly gate: string; // the name of a run of the sheet Flow, where it stands there
  readonly diameter: number; // [in]
  readonly condition: string; // as found, a name of the table gates
  readonly suction: number; // [in.w.g.] while measuring
  readonly before: number; // [cfm]
  readonly after?: number; // [cfm]
  readonly cost?: number;
  readonly minutes?: number;
}

/** Invented: no such gate was measured. Two are still to be mended; one reading says the opposite of mending, one little. */
export const loggedGates: readonly LoggedGate[] = [
  {
    gate: "band saw",
    diameter: 4,
    condition: "open bare slot",
    suction: 2.8,
    before: 20.5,
    after: 1.2,
    cost: 2,
    minutes: 3,
  },
  {
    gate: "planer",
    diameter: 5,
    condition: "open flapped slot",
    suction: 3.4,
    before: 3.1,
    after: 1.4,
    cost: 1,
    minutes: 2,
  },
  {
    gate: "drum sander",
    diameter: 5,
    condition: "loose collar",
    suction: 2.2,
    before: 13,
    after: 15.5,
    cost: 1,
    minutes: 4,
  },
  { gate: "router table", diameter: 4, condition: "open bare slot", suction: 2.9, before: 21.5 },
  { gate: "bench hood", diameter: 4, condition: "shut packed", suction: 3.6, before: 9.8 },
];
