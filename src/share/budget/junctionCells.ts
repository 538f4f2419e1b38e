import { FACTOR, LEAST_FACTOR, TURNED, TURNS_ALL, TURNS_FROM, WIDE } from "../../core/fittings/junction";
import type { BudgetColumn, BudgetPlace, ColumnCells, FlowColumn } from "./blockNames";

type Cells = Partial<ColumnCells<FlowColumn>>;

/** How a row of the workings sums over the rows that join it and looks at the row that it joins. */
export interface Ways {
  readonly joinedSum: (column: BudgetColumn, row: number) => string;
  readonly onward: (column: BudgetColumn, row: number) => string;
  readonly fromInput: (column: BudgetColumn, row: number) => string;
}

/** The geometry of junctions at which a branch costs by the airflows: the core's `junctionOf`, in the order of the flow. */
export function geometryCells(place: BudgetPlace, { joinedSum, onward, fromInput }: Ways): Cells {
  const at = place.cell;
  const joins = (row: number, formula: string): string => `IF(${at("next", row)}>0,${formula},0)`;
  const turns = (row: number): string =>
    `MIN(1,MAX(0,(ABS(${at("branchThere", row)})-${TURNS_FROM})/${TURNS_ALL - TURNS_FROM}))`;
  return {
    branchThere: {
      heading: "It joins by a branch at",
      formula: (row) => joins(row, fromInput("branchAt", row)),
    },
    legArea: {
      heading: "Area at the junction (m²)",
      edge: 1,
      formula: (row) => `IF(${at("next", row)}>0,MIN(${at("area", row)},${onward("area", row)}),${at("area", row)})`,
    },
    along: {
      heading: "cosine of its angle",
      formula: (row) => `IF(${at("branchThere", row)}=0,1,SIN((90-ABS(${at("branchThere", row)}))*PI()/180))`,
    },
    branchArea: {
      heading: "its area, of a branch (m²)",
      formula: (row) => `IF(${at("branchThere", row)}=0,0,${at("legArea", row)})`,
    },
    turnsArea: {
      heading: `more than ${TURNS_FROM}° (m²)`,
      formula: (row) => `${at("branchArea", row)}*${turns(row)}`,
    },
    straightArea: {
      heading: "Straight runs that join (m²)",
      formula: (row) => `${joinedSum("legArea", row)}-${joinedSum("branchArea", row)}`,
    },
    byFlows: {
      heading: "Branches by airflows that join",
      formula: (row) =>
        `COUNTIFS(${place.above("next", row)},${at("own", row)},${place.above("branchThere", row)},">0")`,
    },
    turned: {
      heading: "spare straight runs",
      formula: (row) =>
        `IF(${joinedSum("branchArea", row)}=0,0,${TURNED}*${joinedSum("turnsArea", row)}/${joinedSum("branchArea", row)})`,
    },
    lessened: {
      heading: "Share of a wide branch's factor",
      formula: (row) => {
        const [area, main] = [at("legArea", row), onward("area", row)];
        const beside = `MIN(1,MAX(0,1-(${main}-${onward("straightArea", row)})/${area}))`;
        return `IF(${at("branchThere", row)}>0,IF(${area}<=${WIDE}*${main},0,${beside}),0)`;
      },
    },
    bears: {
      heading: "Its junction costs by airflows",
      formula: (row) => joins(row, `IF(${at("branchThere", row)}>=0,IF(${onward("byFlows", row)}>0,1,0),0)`),
    },
  };
}

/** What meets in a run, of the air that is asked for. */
export function meetingCells(place: BudgetPlace, { joinedSum }: Ways): Cells {
  const at = place.cell;
  const density = place.scalar("density");
  const meets = (row: number, formula: string): string => `IF(${at("byFlows", row)}=0,0,${formula})`;
  const pushes = (row: number): string =>
    `SUMPRODUCT((${place.above("next", row)}=${at("own", row)})*${place.above("along", row)}*${place.above("flow", row)}^2/${place.above("legArea", row)})`;
  return {
    meeting: { heading: "Meets (m³/s)", formula: (row) => meets(row, joinedSum("flow", row)) },
    mainMotion: {
      heading: "its velocity pressure (Pa)",
      formula: (row) => meets(row, `${density}/2*(${at("meeting", row)}/${at("area", row)})^2`),
    },
    push: {
      heading: "its push (Pa)",
      formula: (row) => meets(row, `${density}/${at("area", row)}*${pushes(row)}`),
    },
  };
}

/** The cells, or ranges, that a leg's loss is made of. */
interface Leg {
  readonly flow: string;
  readonly area: string;
  readonly branch: string; // its angle
  readonly lessened: string;
  readonly meeting: string;
  readonly mainMotion: string;
  readonly push: string;
  readonly turned: string;
}

/** The core's `legLoss` without an IF, so that it holds for a range of legs at once. */
function legLoss(leg: Leg, density: string): string {
  const printed = `${FACTOR}*(1-${leg.flow}/${leg.meeting})`;
  const greater = `(${printed}+${LEAST_FACTOR}+ABS(${printed}-${LEAST_FACTOR}))/2`;
  const balance = `(${leg.mainMotion}+${density}/2*(${leg.flow}/${leg.area})^2-${leg.push})`;
  const spared = `(${leg.branch}=0)*${leg.turned}*${leg.mainMotion}*(1-${leg.flow}/${leg.meeting})`;
  return `((1+${leg.lessened}*(${greater}-1))*${balance}-${spared})`;
}

/** The largest suction that a run needs which joins this one, its junction's loss in it. */
export function largestAtJunction(place: BudgetPlace, row: number): string {
  const above = (column: BudgetColumn): string => place.above(column, row);
  const at = (column: BudgetColumn): string => place.cell(column, row);
  const leg = {
    ...{ flow: above("flow"), area: above("legArea"), branch: above("branchThere"), lessened: above("lessened") },
    ...{ meeting: at("meeting"), mainMotion: at("mainMotion"), push: at("push"), turned: at("turned") },
  };
  return `SUMPRODUCT(MAX((${above("next")}=${at("own")})*${above("asked")}*(${above("endSuction")}+${above("bears")}*${legLoss(leg, place.scalar("density"))})))`;
}

/** What a run's junction costs it, as shown; this looks at the run that it joins, further down. */
export function meetsCell(place: BudgetPlace, { onward }: Ways): Cells {
  const at = place.cell;
  return {
    meets: {
      heading: "At its junction (Pa)",
      formula: (row) => {
        const there = (column: BudgetColumn): string => onward(column, row);
        const leg = {
          ...{ flow: at("flow", row), area: at("legArea", row), branch: at("branchThere", row) },
          ...{ lessened: at("lessened", row), meeting: there("meeting"), mainMotion: there("mainMotion") },
          ...{ push: there("push"), turned: there("turned") },
        };
        return `IF(AND(${at("asked", row)}=1,${at("bears", row)}=1),${legLoss(leg, place.scalar("density"))},0)`;
      },
    },
  };
}
