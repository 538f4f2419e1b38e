import { AIR_VISCOSITY, STANDARD_DENSITY } from "../../core/air/constants";
import { TURBULENT_START } from "../../core/friction/flowRegime";
import { DISCHARGE_COEFFICIENT } from "../../core/leaks/openingLeak";
import type { BudgetColumn, BudgetPlace, InputColumn } from "../budget/blockNames";
import { haaland, newton } from "../budget/frictionCells";
import { num } from "../translate/expressions/text";
import { gateOf, restOfList } from "./openGates";
import type { SolvePlace, StillColumn } from "./solveNames";

export interface Column {
  readonly heading: string;
  readonly formula: (row: number) => string;
}

const SMALLEST_ENTRY = "0.000000000001"; // as in the core: an entry without any loss would leave its airflow undetermined

/** What a run is before any air moves: its gate and leak here, what stands at its upstream end, and its resistances. */
export function stillCells(place: SolvePlace, budget: BudgetPlace): Readonly<Record<StillColumn, Column>> {
  const at = place.cell;
  const there = (column: BudgetColumn, row: number): string => budget.cell(column, row);
  const input = (column: InputColumn, row: number): string =>
    `INDEX(${budget.all(column)},${budget.cell("source", row)})`;
  const isSuction = (row: number): string => `${there("sideThere", row)}=1`;
  const isRun = (row: number, formula: string): string => `IF(${there("sideThere", row)}>0,${formula},0)`;
  const joined = (column: "enters" | "fed", row: number): string =>
    `SUMIF(${budget.above("next", row)},${there("own", row)},${place.above(column, row)})`;
  const atMain = (column: "hasMeeting" | "perVelocity", row: number): string =>
    `IF(${at("joins", row)}=0,0,INDEX(${place.below(column, row)},${at("joins", row)}))`;
  const isOpen = (row: number): string => `${at("gate", row)}<>2`;
  const exponent = (row: number): string => input("deviceExponent", row);
  const leaves = (row: number): string =>
    `AND(${there("sideThere", row)}=2,${there("source", row)}=${budget.scalar("exitRow")})`;
  const straight = (length: string, row: number): string =>
    isRun(row, `${length}/${there("width", row)}*${at("perVelocity", row)}`);
  const band = (wall: "pipeWall" | "hoseWall", before: StillColumn | null) => (row: number) =>
    before === null
      ? haaland(at(wall, row), String(TURBULENT_START))
      : newton(at(wall, row), String(TURBULENT_START), at(before, row));
  return {
    rest: { heading: "Names to open, not found so far", formula: (row) => restOfList(place, budget, row) },
    gate: { heading: "Gate: 1 open, 2 shut", formula: (row) => gateOf(place, budget, row) },
    shut: { heading: "shut", formula: (row) => `IF(${at("gate", row)}=2,1,0)` },
    leakArea: {
      heading: "Leak area (m²)",
      formula: (row) =>
        `IF(${isSuction(row)},${input("leakAlways", row)}+IF(${at("gate", row)}=1,${input("leakOpen", row)},IF(${at("gate", row)}=2,${input("leakShut", row)},0)),0)`,
    },
    share: {
      heading: "Leak area, share of the duct",
      formula: (row) => `${DISCHARGE_COEFFICIENT}*${at("leakArea", row)}/${there("area", row)}`,
    },
    enters: {
      heading: "Air can enter: 1 by runs that join, 2 by its end, 3 by its leak alone",
      formula: (row) =>
        `IF(NOT(${isSuction(row)}),0,IF(AND(${isOpen(row)},${joined("enters", row)}>0),1,IF(AND(${isOpen(row)},${there("joining", row)}=0),2,IF(${at("share", row)}>0,3,0))))`,
    },
    cut: {
      heading: "Behind a shut gate",
      formula: (row) =>
        `IF(SUMIF(${budget.below("own", row)},${there("next", row)},${place.below("blocked", row)})>0,1,0)`,
    },
    blocked: { heading: "Shut or cut", formula: (row) => `MAX(${at("shut", row)},${at("cut", row)})` },
    kind: { heading: "Air enters so", formula: (row) => `IF(${at("cut", row)}=1,0,${at("enters", row)})` },
    fed: {
      heading: "From an open end",
      formula: (row) =>
        `IF(AND(${isSuction(row)},${isOpen(row)}),IF(OR(${there("joining", row)}=0,${joined("fed", row)}>0),1,0),0)`,
    },
    joins: {
      heading: "Rows down to the run that it joins",
      formula: (row) =>
        `IF(AND(${isSuction(row)},${there("next", row)}>0),MATCH(${there("next", row)},${budget.below("own", row)},0),0)`,
    },
    perVelocity: {
      heading: "Velocity pressure over airflow² (Pa s²/m⁶)",
      formula: (row) => `${budget.scalar("density")}/(2*${there("area", row)}^2)`,
    },
    perReynolds: {
      heading: "Reynolds number over airflow (s/m³)",
      formula: (row) => `${budget.scalar("density")}*${there("width", row)}/(${there("area", row)}*${AIR_VISCOSITY})`,
    },
    hasMeeting: {
      heading: "1: runs meet in it whose junction costs by airflows",
      formula: (row) => `IF(AND(${at("kind", row)}=1,${there("byFlows", row)}>0),1,0)`,
    },
    isLeg: { heading: "1: it joins such a one", formula: (row) => atMain("hasMeeting", row) },
    bears: {
      heading: "1: which costs it something",
      formula: (row) => `IF(AND(${at("kind", row)}>0,${there("bears", row)}=1),${at("isLeg", row)},0)`,
    },
    perLeg: {
      heading: "its velocity pressure there over airflow²",
      formula: (row) => `${budget.scalar("density")}/(2*${there("legArea", row)}^2)`,
    },
    momentum: {
      heading: "its push over airflow²",
      formula: (row) =>
        `IF(${at("joins", row)}=0,0,${there("along", row)}*${budget.scalar("density")}/(${there("legArea", row)}*INDEX(${budget.below("area", row)},${at("joins", row)})))`,
    },
    wide: { heading: "share of a wide branch's factor", formula: (row) => there("lessened", row) },
    spared: {
      heading: "what a branch spares it over airflow²",
      formula: (row) =>
        `IF(AND(${at("bears", row)}=1,${there("branchThere", row)}=0),INDEX(${budget.below("turned", row)},${at("joins", row)})*${atMain("perVelocity", row)},0)`,
    },
    fixed: {
      heading: "Fittings: loss over airflow²",
      formula: (row) =>
        isRun(
          row,
          `(${input("coefficient", row)}+IF(${leaves(row)},1-${input("exitK", row)},0))*${at("perVelocity", row)}-IF(${leaves(row)},${budget.scalar("density")}/2/${budget.scalar("outletArea")}^2,0)`,
        ),
    },
    mitres: {
      heading: "of which mitres",
      formula: (row) => isRun(row, `${input("mitreK", row)}*${at("perVelocity", row)}`),
    },
    deviceFactor: {
      heading: "Device: loss over airflow to its exponent",
      formula: (row) =>
        isRun(
          row,
          `IF(${input("deviceLoss", row)}>0,${input("deviceLoss", row)}/${input("deviceAirflow", row)}^${exponent(row)}*(${budget.scalar("density")}/${num(STANDARD_DENSITY)})^MIN(MAX(${exponent(row)}-1,0),1),0)`,
        ),
    },
    deviceExponent: {
      heading: "its exponent",
      formula: (row) => `IF(${at("deviceFactor", row)}>0,${exponent(row)},2)`,
    },
    end: {
      heading: "Open end or lone leak: suction over airflow²",
      formula: (row) => {
        const hood = input("hood", row);
        const entry = `MAX(IF(${hood}>=0,${hood},${budget.scalar("plainEnd")}),${SMALLEST_ENTRY})`;
        const lone = `(1-${at("share", row)}^2)/${at("share", row)}^2`;
        return `IF(${at("kind", row)}=2,${entry},IF(${at("kind", row)}=3,${lone},0))*${at("perVelocity", row)}`;
      },
    },
    pipe: { heading: "Pipe: loss over f airflow²", formula: (row) => straight(input("length", row), row) },
    pipeWall: {
      heading: "its wall over 3.7",
      formula: (row) => isRun(row, `${input("roughness", row)}/${there("width", row)}/3.7`),
    },
    hose: {
      heading: "Hose: loss over f airflow²",
      formula: (row) => straight(`${input("hose", row)}*${input("hoseTimes", row)}`, row),
    },
    hoseWall: {
      heading: "its wall over 3.7",
      formula: (row) => isRun(row, `${input("hoseWall", row)}/${there("width", row)}/3.7`),
    },
    pipeBand0: { heading: `Pipe at Re ${TURBULENT_START}: Haaland`, formula: band("pipeWall", null) },
    pipeBand1: { heading: "step 1", formula: band("pipeWall", "pipeBand0") },
    pipeBand2: { heading: "step 2", formula: band("pipeWall", "pipeBand1") },
    pipeBand3: { heading: "step 3", formula: band("pipeWall", "pipeBand2") },
    hoseBand0: { heading: `Hose at Re ${TURBULENT_START}: Haaland`, formula: band("hoseWall", null) },
    hoseBand1: { heading: "step 1", formula: band("hoseWall", "hoseBand0") },
    hoseBand2: { heading: "step 2", formula: band("hoseWall", "hoseBand1") },
    hoseBand3: { heading: "step 3", formula: band("hoseWall", "hoseBand2") },
  };
}
