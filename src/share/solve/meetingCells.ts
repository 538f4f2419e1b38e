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
  const { sum, pushOf, stillPush } = eliminated(place, budget, sweep);
  const now = (column: SweepColumn, row: number): string => at(`${column}${sweep}`, row);
  const flow = (row: number): string => at(`airflow${sweep - 1}`, row);
  const there = (column: SweepColumn, row: number): string => onward(place, `${column}${sweep}`, row);
  const main = (row: number): string => `MAX(0,${there("meets", row)})`;
  const bears = (row: number, formula: string): string => `IF(${at("bears", row)}=0,0,${formula})`;
  const leg = (row: number, formula: string): string =>
    `IF(OR(${at("isLeg", row)}=0,${at("kind", row)}=0),0,${formula})`;
  const meeting = (row: number, formula: string): string => `IF(${at("hasMeeting", row)}=0,0,${formula})`;
  // How the factor falls with the share of the air, where it does.
  const fall = (row: number): string => {
    const [q, all] = [flow(row), there("meets", row)];
    const falls = `AND(${at("wide", row)}>0,${all}>0,${q}>0,${q}<${all},${FACTOR}*(1-${q}/${all})>${LEAST_FACTOR})`;
    return `IF(${at("wide", row)}=0,0,IF(${all}<=0,0,IF(${falls},0-${at("wide", row)}*${FACTOR}*${now("balance", row)}/${all},0)))`;
  };
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
          throughSlope(
            place,
            sweep,
            `${now("slope", row)}+${bears(row, `${now("factor", row)}*2*${at("perLeg", row)}*ABS(${flow(row)})+${now("fall", row)}+${at("spared", row)}*${main(row)}`)}`,
            row,
          ),
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
        const entering = `(${now("arrivingOffset", row)}+${now("leakOffset", row)})`;
        const along = `${entering}/${now("rate", row)}-${now("loss", row)}-${now("slope", row)}*(${entering}-${flow(row)})`;
        return leg(row, `${now("through", row)}*(${along}-(${constant}))`); // not by the offset, which would be a step more for each row
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

/** The two equations of a junction, for its main's air and its push, solved for each. */
function eliminated(place: SolvePlace, budget: BudgetPlace, sweep: number) {
  const now = (column: SweepColumn, row: number): string => place.cell(`${column}${sweep}`, row);
  const sum = (row: number, ...columns: readonly SweepColumn[]): string => {
    const joined = `(${budget.above("next", row)}=${budget.cell("own", row)})`;
    return `SUMPRODUCT(${[joined, ...columns.map((column) => place.above(`${column}${sweep}`, row))].join("*")})`;
  };
  const det = (row: number): string =>
    `((1+${now("mainByMain", row)})*(1+${now("pushByPush", row)})-${now("mainByPush", row)}*${now("pushByMain", row)})`;
  const mainOf = (first: string, second: string, row: number): string =>
    `((${first})*(1+${now("pushByPush", row)})-${now("mainByPush", row)}*(${second}))/${det(row)}`;
  const pushOf = (first: string, second: string, row: number): string =>
    `((1+${now("mainByMain", row)})*(${second})-${now("pushByMain", row)}*(${first}))/${det(row)}`;
  const stillPush = (row: number): string => `${sum(row, "pushes", "alone")}-${now("push", row)}`;
  return { sum, mainOf, pushOf, stillPush };
}

/** The air that arrives in a run in which legs meet, as a line over the suction there. */
export function mainLine(place: SolvePlace, budget: BudgetPlace, sweep: number, row: number) {
  const { sum, mainOf, stillPush } = eliminated(place, budget, sweep);
  return {
    offset: mainOf(sum(row, "alone"), stillPush(row), row),
    rate: mainOf(sum(row, "through"), sum(row, "pushes", "through"), row),
  };
}

/** Airflow per suction through a run and whatever else rises with its airflow by this slope; one step behind the air that arrives. */
export function throughSlope(place: SolvePlace, sweep: number, slope: string, row: number): string {
  const perSuction = `(${place.cell(`leakBase${sweep}`, row)}+(1+${place.cell(`leakTimes${sweep}`, row)})*${place.cell(`arrivingRate${sweep}`, row)})`;
  return `${perSuction}/(1+(${slope})*${perSuction})`;
}

/** A leg's airflow as a line over its junction's suction. */
export function legLine(place: SolvePlace, sweep: number, row: number) {
  const now = (column: SweepColumn): string => place.cell(`${column}${sweep}`, row);
  const there = (column: SweepColumn): string => onward(place, `${column}${sweep}`, row);
  return {
    offset: `${now("alone")}+${now("through")}*(${now("factor")}*${there("pushOffset")}-${now("byMain")}*${there("arrivingOffset")})`,
    rate: `${now("through")}*(1+${now("factor")}*${there("pushRate")}-${now("byMain")}*${there("arrivingRate")})`,
  };
}
