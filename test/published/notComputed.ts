/**
 * Published rows that our functions do not compute, each with its reason. The list may only shrink: a later release that
 * computes one moves it into the data. Rows from memory, and the tables of materials, velocities, filters and limits, are
 * no part of it; the tests of the reference tables hold those.
 */
export interface NotComputed {
  readonly ids: readonly string[];
  readonly reason: string;
}

export const notComputed: readonly NotComputed[] = [
  {
    ids: ["GF13", "GF14"],
    reason: "A power law of its own, whose printed constant does not give its printed numbers.",
  },
  {
    ids: [
      ...["FF04", "FF05", "FF07", "FF08", "FF10", "FF11", "FF13", "FF14", "FF16", "FF19", "FF20", "FF22", "FF23"],
      ...["FF25", "FF26", "FF28", "FF29", "FF32"],
    ],
    reason: "Another correlation than Colebrook's or Haaland's.",
  },
  { ids: ["FF31"], reason: "The laminar formula forced to Re 20 000, where air is turbulent." },
  { ids: ["D01"], reason: "A height of 2000 m below the sea, outside the range that the function accepts." },
  { ids: ["H19", "H20", "H21", "H22"], reason: "A library's formula for an entry, not a printed table." },
  {
    ids: [
      ...[
        "H23",
        "H24",
        "H25",
        "H26",
        "H27",
        "H28",
        "H29",
        "H30",
        "H31",
        "H32",
        "H33",
        "H34",
        "H35",
        "H36",
        "H37",
        "H38",
      ],
      ...["H39", "H40", "H41", "H42", "GH018", "GH024"],
    ],
    reason: "An airflow or port asked for at a machine: a table value, nothing to compute.",
  },
  {
    ids: ["H43", "GH019", "GH020", "GH021", "GH022", "GH023", "GH025", "GH026", "GH027", "GH028"],
    reason: "A rule or a fact of design, nothing to compute.",
  },
  {
    ids: ["K089", "K091", "K092", "K094", "K095", "K098", "K100", "K101"],
    reason: "A library's formula for a fitting (Miller, Hooper, Crane), not a printed table.",
  },
  {
    ids: ["K103", "K104", "K106"],
    reason: "A rounded figure of an abstract, which the words as it hangs take as it stands, or a bound.",
  },
  { ids: ["GK106"], reason: "The form does not say which elbow its 0.13 belongs to." },
  {
    ids: ["L14", "L15", "L16", "GL07", "GL08", "GL34", "GL35"],
    reason: "A fact about tests and classes, nothing to compute.",
  },
  {
    ids: ["L23", "L24", "L26", "L27"],
    reason: "The discharge coefficient of a metering orifice; our leaks take 0.6 as a definition.",
  },
  {
    ids: ["GL09", "GL10", "GL27", "GL28", "GL29", "GL30", "GL31"],
    reason: "One measurement of a joint or a damper: a table value, in part without its pressure.",
  },
  {
    ids: ["GL11", "GL16", "GL21"],
    reason: "The damper class's limit at 4 in.w.g., from which its other limits are computed.",
  },
  { ids: ["N13"], reason: "The figures of its series duct (case W2) stand nowhere in our collection." },
  { ids: ["GN08"], reason: "A fact about fan types, nothing to compute." },
  {
    ids: ["M08", "M10", "M11", "M12", "M13", "GM07", "GM08", "GM09"],
    reason: "Where and how to measure: advice, nothing to compute.",
  },
  { ids: ["M16"], reason: "A sum of two pressures; no function of ours adds them." },
  { ids: ["U04"], reason: "Millimetres of mercury are no unit of ours." },
  { ids: ["GW1 margin"], reason: "The sheet adds 20 % to the fan's pressure; we add none." },
  {
    ids: ["GW5 merge", "GW5 total pressure", "GW5 fan static pressure", "GW5 fan total pressure"],
    reason: "A weighted mean or a difference of pressures; no function of ours does it.",
  },
];
