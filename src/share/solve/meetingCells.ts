import { FACTOR, LEAST_FACTOR } from "../../core/fittings/junction";
import type { BudgetPlace } from "../budget/blockNames";
import type { MeetingColumn, SolvePlace, StillColumn, SweepColumn } from "./solveNames";
import type { Column } from "./stillCells";

/** What each run costs at the junction that it joins, at the airflows that the sweep before has left: the core's `legLoss`. */
export function legCells(
  place: SolvePlace,
  budget: BudgetPlace,
  sweep: number,
): Readonly<Record<"meets" | "push" | "factor" | "balance" | "joint", Column>> {
  const at = place.cell;
  const now = (column: MeetingColumn, row: number): string => at(`${column}${sweep}`, row);
  const flow = (row: number): string => at(`airflow${sweep - 1}`, row);
  const above = (column: StillColumn | `${SweepColumn}${number}`, row: number): string => place.above(column, row);
  const joined = (row: number): string => `(${budget.above("next", row)}=${budget.cell("own", row)})`;
  const there = (column: StillColumn | `${SweepColumn}${number}`, row: number): string => onward(place, column, row);
  const bears = (row: number, formula: string): string => `IF(${at("bears", row)}=0,0,${formula})`;
  const main = (row: number): string => `MAX(0,${there(`meets${sweep}`, row)})`;
  return {
    meets: {
      heading: `Sweep ${sweep}: meets (m³/s)`,
      formula: (row) =>
        `IF(${at("hasMeeting", row)}=0,0,SUMIF(${budget.above("next", row)},${budget.cell("own", row)},${above(`airflow${sweep - 1}`, row)}))`,
    },
    push: {
      heading: "their push (Pa)",
      formula: (row) => {
        const q = above(`airflow${sweep - 1}`, row);
        return `IF(${at("hasMeeting", row)}=0,0,SUMPRODUCT(${joined(row)}*${above("momentum", row)}*((${q}+ABS(${q}))/2)^2))`;
      },
    },
    factor: {
      heading: "Factor of its branch",
      formula: (row) => {
        const share = `MIN(1,MAX(0,${flow(row)}/${there(`meets${sweep}`, row)}))`;
        return bears(
          row,
          `IF(${at("wide", row)}=0,1,1+${at("wide", row)}*(MAX(${FACTOR}*(1-IF(${there(`meets${sweep}`, row)}>0,${share},0)),${LEAST_FACTOR})-1))`,
        );
      },
    },
    balance: {
      heading: "Balance of momentum (Pa)",
      formula: (row) =>
        bears(
          row,
          `${there("perVelocity", row)}*${main(row)}^2+${at("perLeg", row)}*${flow(row)}*ABS(${flow(row)})-${there(`push${sweep}`, row)}`,
        ),
    },
    joint: {
      heading: "At its junction (Pa)",
      formula: (row) =>
        bears(
          row,
          `${now("factor", row)}*${now("balance", row)}-${at("spared", row)}*${main(row)}*(${main(row)}-${flow(row)})`,
        ),
    },
  };
}

const onward = (place: SolvePlace, column: StillColumn | `${SweepColumn}${number}`, row: number): string =>
  `INDEX(${place.below(column, row)},${place.cell("joins", row)})`;

/** The junctions eliminated: the core's `legLines`, with one sum for each number of its two equations. */
export function junctionCells(
  place: SolvePlace,
  budget: BudgetPlace,
  sweep: number,
): Readonly<Record<Exclude<MeetingColumn, keyof ReturnType<typeof legCells>>, Column>> {
  const at = place.cell;
  const now = (column: SweepColumn, row: number): string => at(`${column}${sweep}`, row);
  const flow = (row: number): string => at(`airflow${sweep - 1}`, row);
  const there = (column: SweepColumn, row: number): string => onward(place, `${column}${sweep}`, row);
  const main = (row: number): string => `MAX(0,${there("meets", row)})`;
  const bears = (row: number, formula: string): string => `IF(${at("bears", row)}=0,0,${formula})`;
  const leg = (row: number, formula: string): string =>
    `IF(OR(${at("isLeg", row)}=0,${at("kind", row)}=0),0,${formula})`;
  const meeting = (row: number, formula: string): string => `IF(${at("hasMeeting", row)}=0,0,${formula})`;
  const sum = (row: number, ...columns: readonly SweepColumn[]): string => {
    const joined = `(${budget.above("next", row)}=${budget.cell("own", row)})`;
    return `SUMPRODUCT(${[joined, ...columns.map((column) => place.above(`${column}${sweep}`, row))].join("*")})`;
  };
  // How the factor falls with the share of the air, where it does.
  const fall = (row: number): string => {
    const [q, all] = [flow(row), there("meets", row)];
    const falls = `AND(${at("wide", row)}>0,${all}>0,${q}>0,${q}<${all},${FACTOR}*(1-${q}/${all})>${LEAST_FACTOR})`;
    return `IF(${at("wide", row)}=0,0,IF(${all}<=0,0,IF(${falls},0-${at("wide", row)}*${FACTOR}*${now("balance", row)}/${all},0)))`;
  };
  const det = (row: number): string =>
    `((1+${now("mainByMain", row)})*(1+${now("pushByPush", row)})-${now("mainByPush", row)}*${now("pushByMain", row)})`;
  const mainOf = (first: string, second: string, row: number): string =>
    `((${first})*(1+${now("pushByPush", row)})-${now("mainByPush", row)}*(${second}))/${det(row)}`;
  const pushOf = (first: string, second: string, row: number): string =>
    `((1+${now("mainByMain", row)})*(${second})-${now("pushByMain", row)}*(${first}))/${det(row)}`;
  const stillPush = (row: number): string => `${sum(row, "pushes", "alone")}-${now("push", row)}`;
  return {
    byMain: {
      heading: "its slope by the main's air",
      formula: (row) =>
        bears(
          row,
          `${now("factor", row)}*2*${onward(place, "perVelocity", row)}*${main(row)}-(${now("fall", row)})*IF(${main(row)}>0,${flow(row)}/${main(row)},0)-${at("spared", row)}*(2*${main(row)}-${flow(row)})`,
        ),
    },
    fall: { heading: "by the factor", formula: (row) => bears(row, fall(row)) },
    through: {
      heading: "Airflow: × pressure",
      formula: (row) =>
        leg(
          row,
          `${now("rate", row)}/(1+${now("rate", row)}*${bears(row, `${now("factor", row)}*2*${at("perLeg", row)}*ABS(${flow(row)})+${now("fall", row)}+${at("spared", row)}*${main(row)}`)})`,
        ),
    },
    alone: {
      heading: "+ this",
      formula: (row) => {
        const own = `(${now("factor", row)}*2*${at("perLeg", row)}*ABS(${flow(row)})+${now("fall", row)}+${at("spared", row)}*${main(row)})`;
        const constant = bears(
          row,
          `${now("joint", row)}-${own}*${flow(row)}-${now("byMain", row)}*${there("meets", row)}+${now("factor", row)}*${there("push", row)}`,
        );
        return leg(row, `${now("through", row)}*(${now("offset", row)}/${now("rate", row)}-(${constant}))`);
      },
    },
    pushes: {
      heading: "what its push gains",
      formula: (row) => leg(row, `2*${at("momentum", row)}*MAX(0,${flow(row)})`),
    },
    mainByMain: { heading: "Main by main", formula: (row) => meeting(row, sum(row, "through", "byMain")) },
    mainByPush: { heading: "by push", formula: (row) => meeting(row, `0-${sum(row, "through", "factor")}`) },
    pushByMain: { heading: "Push by main", formula: (row) => meeting(row, sum(row, "pushes", "through", "byMain")) },
    pushByPush: { heading: "by push", formula: (row) => meeting(row, `0-${sum(row, "pushes", "through", "factor")}`) },
    mainOffset: {
      heading: "Main = this",
      formula: (row) => meeting(row, mainOf(sum(row, "alone"), stillPush(row), row)),
    },
    mainRate: {
      heading: "+ this × suction",
      formula: (row) => meeting(row, mainOf(sum(row, "through"), sum(row, "pushes", "through"), row)),
    },
    pushOffset: {
      heading: "Push = this",
      formula: (row) => meeting(row, pushOf(sum(row, "alone"), stillPush(row), row)),
    },
    pushRate: {
      heading: "+ this × suction",
      formula: (row) => meeting(row, pushOf(sum(row, "through"), sum(row, "pushes", "through"), row)),
    },
  };
}

/** A leg's airflow with the junction's suction known. */
export function legAirflow(place: SolvePlace, sweep: number, row: number): string {
  const now = (column: SweepColumn): string => place.cell(`${column}${sweep}`, row);
  const there = (column: SweepColumn): string => onward(place, `${column}${sweep}`, row);
  const down = now("down");
  const main = `(${there("mainOffset")}+${there("mainRate")}*${down})`;
  const push = `(${there("pushOffset")}+${there("pushRate")}*${down})`;
  return `${now("alone")}+${now("through")}*(${down}-${now("byMain")}*${main}+${now("factor")}*${push})`;
}
