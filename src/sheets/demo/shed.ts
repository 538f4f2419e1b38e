/**
 * The demo's duct system: a shared boat-building shed. Invented; no such shed, machine or reading exists.
 *
 * It is drawn so that it teaches four things: the drum sander's 5 in duct is too wide for 400 cfm (2900 fpm, so its dust
 * settles); its path and the south main's need so much less suction than their neighbours that they want resizing; and
 * with the fan of the flow sheet it takes more than it asks for, from hoods that then get less; and the leaks, worst at
 * the separator's bin beside the fan, take air that the hoods get back only in part.
 *
 * The columns of leaks stand last, so that the same table without them is a narrower range.
 */
export const runColumns = [
  "Run",
  "To",
  "Airflow (cfm)",
  "Diameter (in)",
  "Length (ft)",
  "Flex (ft)",
  "Hood",
  "Fittings",
  "Gate",
  "Material",
  "Device loss (in.w.g.)",
  "Device airflow (cfm)",
  "Device exponent",
  "Device clean loss (in.w.g.)",
  "Side",
  "Leak",
  "Leak open",
  "Leak shut",
] as const;

export type RunColumn = (typeof runColumns)[number];

/** What each column takes, told where its header is selected. */
export const columnNotes: Readonly<Record<RunColumn, string>> = {
  Run: "A name of its own for each piece of duct between two junctions.",
  To: "The run that it joins; fan for the last one.",
  "Airflow (cfm)": "What a hood should draw. Only hoods take an airflow; mains add up what joins them.",
  "Diameter (in)": "Inside diameter.",
  "Length (ft)": "Length of pipe, without hose.",
  "Flex (ft)": "Length of hose, drawn out.",
  Hood: "How the air enters: a name from the table hoods, or its loss coefficient K. Only open ends have one.",
  Fittings: "Names from the table fittings, with r/D or angle and how many: elbow 1.5 x2; branch 30.",
  Gate: "open or shut; blank where there is none. The sheet Flow has gates of its own to try.",
  Material: "A name from the table materials, or a roughness in inches.",
  "Device loss (in.w.g.)": "Loss of a separator or filter at its rated airflow.",
  "Device airflow (cfm)": "The airflow at which that loss was rated.",
  "Device exponent": "2 for a separator, 1 for a filter.",
  "Device clean loss (in.w.g.)":
    "Loss when it is clean, where it is dirty now: DUCT.GAINS then says what cleaning gives.",
  Side: "suction, or discharge for what stands after the fan.",
  Leak: "An open area in in² at the run's upstream end, always there: a bin's lid, a loose joint.",
  "Leak open":
    "What leaks while the gate is open: a gate's condition from the table gates (an estimate), or an area in in².",
  "Leak shut":
    "What leaks while the gate is shut: a gate's condition from the table gates (an estimate), or an area in in².",
};

/** One run: only the columns that are filled. */
export type ShedRun = Partial<Record<RunColumn, string | number>>;

const hoodRun = (
  run: string,
  main: string,
  airflow: number,
  diameter: number,
  flex: number,
  rest: ShedRun,
): ShedRun => ({
  Run: run,
  To: main,
  "Airflow (cfm)": airflow,
  "Diameter (in)": diameter,
  "Flex (ft)": flex,
  Gate: "open",
  Material: "galvanised steel",
  Side: "suction",
  ...rest,
});

const carrier = (run: string, to: string, diameter: number, length: number, fittings: string): ShedRun => ({
  Run: run,
  To: to,
  "Diameter (in)": diameter,
  "Length (ft)": length,
  Fittings: fittings,
  Material: "galvanised steel",
  Side: "suction",
});

export const shedRuns: readonly ShedRun[] = [
  hoodRun("band saw", "north main", 400, 4, 3, {
    "Length (ft)": 6,
    Hood: "flanged end",
    Fittings: "elbow 1.5; branch 30",
    "Leak open": "open bare slot",
    "Leak shut": "shut packed",
  }),
  hoodRun("planer", "north main", 550, 5, 6, {
    "Length (ft)": 12,
    Hood: "flanged end",
    Fittings: "elbow 1.5 x2; branch 30",
    "Leak open": "open flapped slot",
    "Leak shut": "shut wrong side",
  }),
  hoodRun("drum sander", "south main", 400, 5, 3, {
    "Length (ft)": 5,
    Hood: "flanged end",
    Fittings: "elbow 1.5; branch 30",
    "Leak open": "open flapped slot",
    "Leak shut": "shut seated",
  }),
  hoodRun("router table", "south main", 400, 4, 3, {
    "Length (ft)": 4,
    Hood: "plain end",
    Fittings: "elbow 1.5; branch 30",
    "Leak open": "open bare slot",
    "Leak shut": "shut packed",
  }),
  carrier("north main", "trunk", 6, 20, "elbow 1.5; branch 30"),
  carrier("south main", "trunk", 6, 10, "branch 30"),
  carrier("trunk", "separator", 9, 12, "elbow 2"),
  {
    ...carrier("separator", "fan", 9, 4, ""),
    Leak: 1.2, // the lid of its bin
    "Device loss (in.w.g.)": 2,
    "Device airflow (cfm)": 1800,
    "Device exponent": 2,
  },
  {
    Run: "filter",
    To: "outside",
    "Diameter (in)": 10,
    "Length (ft)": 6,
    Fittings: "elbow 2",
    Material: "galvanised steel",
    "Device loss (in.w.g.)": 1.5,
    "Device airflow (cfm)": 1800,
    "Device exponent": 1,
    "Device clean loss (in.w.g.)": 0.6,
    Side: "discharge",
  },
];
