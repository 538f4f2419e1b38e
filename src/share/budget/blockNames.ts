import type { RunColumn } from "../../reference/runColumns";
import type { BlockColumn, BlockPlace } from "./block";

/** Columns of the workings in the order of the runs table, then those in the order of the flow: ends first, the fan last. */
export const inputColumns = [
  "used",
  "name",
  "key",
  "toKey",
  "sideSaid",
  "side",
  "into",
  "diameter",
  "length",
  "hose",
  "hoseWords",
  "hoseLies",
  "hoseTimes",
  "hoseWall",
  "roughness",
  "fittingList",
  "coefficient",
  "mitreK",
  "branchNamed",
  "branchAt",
  "exitK",
  "begins",
  "leaves",
  "hood",
  "wanted",
  "gate",
  "leakAlways",
  "leakOpen",
  "leakShut",
  "leakArea",
  "deviceLoss",
  "deviceAirflow",
  "deviceExponent",
  "dustKey",
  "dustLow",
  "dustHigh",
  "brings",
  "sparkName",
  "far",
  "rank",
  "nearTo",
  "nearHood",
  "nearMaterial",
  "nearDust",
  "fault",
  "gone",
  "trouble",
  "label",
  "mayBranch",
  "openEnd",
  "namesake",
  "kind",
  "told",
  "lacks",
] as const;

export const flowColumns = [
  "source",
  "knot",
  "way",
  "end",
  "cause",
  "sideThere",
  "own",
  "next",
  "joining",
  "shut",
  "cut",
  "blocked",
  "asked",
  "carries",
  "width",
  "area",
  "branchThere",
  "legArea",
  "along",
  "branchArea",
  "turnsArea",
  "straightArea",
  "byFlows",
  "turned",
  "lessened",
  "bears",
  "leakThere",
  "idleArea",
  "meeting",
  "mainMotion",
  "push",
  "upSuction",
  "arriving",
  "leakShare",
  "leak",
  "flow",
  "speed",
  "motion",
  "reynolds",
  "pipe0",
  "pipe1",
  "pipe2",
  "pipe3",
  "pipeFactor",
  "hose0",
  "hose1",
  "hose2",
  "hose3",
  "hoseFactor",
  "friction",
  "fittings",
  "device",
  "entry",
  "endSuction",
  "meets",
  "total",
  "toFan",
  "junction",
  "base",
  "airflow",
  "velocity",
  "velocityPressure",
  "endShown",
  "governs",
  "ratio",
  "dusts",
  "met",
  "unheld",
  "pathWaits",
  "unmet",
  "note",
] as const;

/** A column of the runs table as it stands there, and as the workings read it: a text of digits as its number, no wildcards. */
export type TableColumn = `typed ${RunColumn}` | `read ${RunColumn}`;

/** Columns that follow the runs to the fan in ever longer strides: which run is reached, and over how many. */
type Stride = `reach${number}` | `steps${number}`;

export type InputColumn = (typeof inputColumns)[number];
export type FlowColumn = (typeof flowColumns)[number];

export type BudgetColumn = TableColumn | InputColumn | FlowColumn | Stride;

export const budgetScalars = [
  "tableRows",
  "named",
  "unread",
  "density",
  "hoseRoughness",
  "plainEnd",
  "last",
  "ends",
  "troubles",
  "fanAirflow",
  "fanSuction",
  "dischargeLoss",
  "exitRow",
  "outletArea",
  "loops",
  "wrong",
  "lost",
  "alsoLost",
  "lostBranches",
  "ok",
  "part",
  "fanWaits",
  "outWaits",
  "after",
] as const;

/** Where a column of the runs table stands in its range. */
type ColumnScalar = `at ${RunColumn}`;

export type BudgetScalar = (typeof budgetScalars)[number] | ColumnScalar;

/** Where the workings of a budget stand. */
export type BudgetPlace = BlockPlace<BudgetColumn, BudgetScalar>;

/** Some of the columns, by their names. */
export type ColumnCells<Name extends BudgetColumn> = Readonly<Record<Name, Omit<BlockColumn<Name>, "name">>>;

export const namedColumns = <Name extends BudgetColumn>(columns: Partial<ColumnCells<Name>>): BlockColumn<Name>[] =>
  (Object.entries(columns) as [Name, ColumnCells<Name>[Name]][]).map(([name, column]) => ({ name, ...column }));
