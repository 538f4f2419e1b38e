import type { BlockPlace } from "../budget/block";

/** So many times the workings go along the tree to the fan and back; what has not settled then is no answer. */
export const SWEEPS = 10;

/** What stays as it is while the air settles: rows in the order of the flow, as the budget's workings have them. */
export const stillColumns = [
  "rest",
  "gate",
  "shut",
  "leakArea",
  "share",
  "enters",
  "cut",
  "blocked",
  "kind",
  "fed",
  "joins",
  "perVelocity",
  "perReynolds",
  "hasMeeting",
  "isLeg",
  "bears",
  "perLeg",
  "momentum",
  "wide",
  "spared",
  "fixed",
  "mitres",
  "deviceFactor",
  "deviceExponent",
  "end",
  "pipe",
  "pipeWall",
  "hose",
  "hoseWall",
  "pipeBand0",
  "pipeBand1",
  "pipeBand2",
  "pipeBand3",
  "hoseBand0",
  "hoseBand1",
  "hoseBand2",
  "hoseBand3",
] as const;

/** What runs cost that meet, and how a sweep goes through their junction. */
export const meetingColumns = [
  "meets",
  "push",
  "factor",
  "balance",
  "joint",
  "fall",
  "byMain",
  "through",
  "alone",
  "pushes",
  "mainByMain",
  "mainByPush",
  "pushByMain",
  "pushByPush",
  "pushOffset",
  "pushRate",
] as const;

/** What each sweep leaves behind, first towards the fan and then back. Each stands behind the number of its sweep. */
export const sweepColumns = [
  ...meetingColumns,
  "pipeRoot",
  "hoseRoot",
  "pipeLoss",
  "hoseLoss",
  "pipeSlope",
  "hoseSlope",
  "loss",
  "slope",
  "arrivingOffset",
  "arrivingRate",
  "leakAt",
  "own",
  "coupling",
  "leakBase",
  "leakTimes",
  "leakOffset",
  "rate",
  "offset",
  "flowOffset",
  "flowRate",
  "down",
  "airflow",
  "suction",
  "arriving",
  "leak",
] as const;

/** The last look at what the sweeps found: the losses once more, and by how much each run misses its equations. */
export const checkColumns = [
  ...(["pipeRoot", "hoseRoot", "pipeLoss", "hoseLoss", "loss"] as const),
  ...(["meets", "push", "factor", "balance", "joint"] as const),
] as const;

/** What is known before the first sweep. */
export const startColumns = ["pipeRoot", "hoseRoot", "arriving", "leak", "airflow"] as const;

/** How a sweep is closed at the fan. */
export const closings = [
  "afterLoss",
  "afterSlope",
  "fanOffset",
  "fanRate",
  "piece",
  "from",
  "wide",
  "high",
  "rise",
  "slopeThere",
  "slopeNext",
  "share0",
  "share1",
  "share2",
  "share3",
  "share4",
  "fanAirflow",
  "fanSuction",
] as const;

export const solveScalars = [
  "open",
  "list",
  "left",
  "thickness",
  "shutOff",
  "least",
  "most",
  "humped",
  "smallest",
  "openArea",
  "lastKind",
  "leaks",
  "fanPressure",
  "misfit",
  "why",
  "ok",
] as const;

export type StillColumn = (typeof stillColumns)[number];
export type MeetingColumn = (typeof meetingColumns)[number];
export type SweepColumn = (typeof sweepColumns)[number];
export type SolveColumn = StillColumn | `${SweepColumn}${number}` | "missed" | "note";
export type Closing = (typeof closings)[number];
export type SolveScalar = (typeof solveScalars)[number] | `${Closing}${number}`;

/** Where the workings of a solved network stand. */
export type SolvePlace = BlockPlace<SolveColumn, SolveScalar>;

const behind = <Name extends string, Count extends number>(names: readonly Name[], sweep: Count) =>
  names.map((name) => `${name}${sweep}` as const);

const sweeps = Array.from({ length: SWEEPS }, (_, index) => index + 1);

/** Every column and every single number, in the order in which they stand. */
export const solveColumnNames: readonly SolveColumn[] = [
  ...stillColumns,
  ...behind(startColumns, 0),
  ...sweeps.flatMap((sweep) => behind(sweepColumns, sweep)),
  ...behind(checkColumns, SWEEPS + 1),
  "missed",
  "note",
];

export const solveScalarNames: readonly SolveScalar[] = [
  ...solveScalars,
  "fanAirflow0",
  ...sweeps.flatMap((sweep) => behind(closings, sweep)),
];
