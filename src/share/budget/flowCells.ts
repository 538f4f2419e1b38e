import { AIR_VISCOSITY, STANDARD_DENSITY } from "../../core/air/constants";
import { DISCHARGE_COEFFICIENT } from "../../core/leaks/openingLeak";
import type { UnitSystem } from "../../reference/quantities";
import { moreInSlowAir } from "../translate/expressions/slowAir";
import { num } from "../translate/expressions/text";
import type { BlockColumn } from "./block";
import { type BudgetColumn, type BudgetPlace, type ColumnCells, type FlowColumn, namedColumns } from "./blockNames";
import { frictionCells } from "./frictionCells";
import { geometryCells, largestAtJunction, meetingCells, meetsCell, type Ways } from "./junctionCells";
import { metIn, ownDust } from "./metalCells";
import { noteOf } from "./noteCells";
import { causeCells, unknownCells } from "./waitCells";

type Cells = Partial<ColumnCells<FlowColumn>>;

/**
 * The design pass by plain formulas, in the order of the flow: every run stands below all that join it, so a row sums over the
 * rows above it. What comes back from the fan (path loss, a shut gate, the suction at a junction) sums over the rows below.
 */
export function flowCells(place: BudgetPlace, system: UnitSystem): BlockColumn<BudgetColumn>[] {
  const ways: Ways = {
    joinedSum: (column, row) => joinedSum(place, column, row),
    onward: (column, row) => onward(place, column, row),
    fromInput: (column, row) => fromInput(place, column, row),
  };
  const columns: Cells = {
    ...tree(place),
    ...geometryCells(place, ways),
    ...meetingCells(place, ways),
    ...asked(place),
    ...frictionCells(place),
    ...losses(place),
    ...meetsCell(place, ways),
    ...shown(place),
    ...metal(place),
    ...unknownCells(place),
    note: { heading: "Note", formula: (row) => noteOf(place, system, row) },
  };
  return namedColumns(columns);
}

/** From the rows that join this one. */
const joinedSum = (place: BudgetPlace, column: BudgetColumn, row: number): string =>
  `SUMIF(${place.above("next", row)},${place.cell("own", row)},${place.above(column, row)})`;

/** From the run that this one joins. */
const onward = (place: BudgetPlace, column: BudgetColumn, row: number): string =>
  `SUMIF(${place.below("own", row)},${place.cell("next", row)},${place.below(column, row)})`;

const fromInput = (place: BudgetPlace, column: BudgetColumn, row: number): string =>
  `INDEX(${place.all(column)},${place.cell("source", row)})`;

function tree(place: BudgetPlace): Cells {
  const at = place.cell;
  return {
    source: { heading: "Row of the table", formula: (row) => `MATCH(${row},${place.all("rank")},0)` },
    ...causeCells(place),
    own: { heading: "Its number", edge: -5, formula: (row) => `IF(${at("sideThere", row)}=1,${at("source", row)},-1)` },
    next: {
      heading: "It joins",
      edge: -6,
      // -3: the run that it joins is not known, or cannot be computed
      formula: (row) =>
        `IF(${at("sideThere", row)}=1,IF(${at("way", row)}<0,-3,IF(${at("way", row)}=0,0,IF(SUMIF(${place.below("knot", row)},${at("way", row)},${place.below("sideThere", row)})=1,${at("way", row)},-3))),-2)`,
    },
    joining: { heading: "Runs that join", formula: (row) => `COUNTIF(${place.above("next", row)},${at("own", row)})` },
    shut: {
      heading: "Gate shut",
      formula: (row) => `IF(${at("knot", row)}>0,IF(IFERROR(${fromInput(place, "gate", row)},0)=2,1,0),0)`,
    },
    cut: {
      heading: "Cut off",
      formula: (row) => `IF(SUMIF(${place.below("knot", row)},${at("way", row)},${place.below("blocked", row)})>0,1,0)`,
    },
    blocked: { heading: "Shut or cut", formula: (row) => `MAX(${at("shut", row)},${at("cut", row)})` },
    asked: {
      heading: "Carries wanted air",
      formula: (row) =>
        `IF(OR(${at("sideThere", row)}<>1,${at("blocked", row)}=1),0,IF(${at("joining", row)}=0,IF(${fromInput(place, "wanted", row)}>0,1,0),IF(${joinedSum(place, "asked", row)}>0,1,0)))`,
    },
    carries: {
      heading: "Has losses",
      formula: (row) => `IF(OR(${at("asked", row)}=1,${at("sideThere", row)}=2),1,0)`,
    },
    width: {
      heading: "Diameter (m)",
      formula: (row) => `IF(${at("sideThere", row)}>0,${fromInput(place, "diameter", row)},1)`,
    },
    area: { heading: "Area (m²)", formula: (row) => `PI()/4*${at("width", row)}^2` },
    leakThere: {
      heading: "Leak area (m²)",
      formula: (row) => `IF(${at("sideThere", row)}>0,${fromInput(place, "leakArea", row)},0)`,
    },
    idleArea: {
      heading: "Leak area of a part that asks for no air (m²)",
      formula: (row) =>
        `IF(OR(${at("sideThere", row)}<>1,${at("asked", row)}=1),0,${at("leakThere", row)}+IF(${at("shut", row)}=1,0,${joinedSum(place, "idleArea", row)}))`,
    },
  };
}

function asked(place: BudgetPlace): Cells {
  const at = place.cell;
  const density = place.scalar("density");
  const fastest = (row: number): string =>
    `SUMPRODUCT(MAX((${place.above("next", row)}=${at("own", row)})*${place.above("asked", row)}*${place.above("endSuction", row)}))`;
  const hood = (row: number): string =>
    `IF(${fromInput(place, "hood", row)}>=0,${fromInput(place, "hood", row)},${place.scalar("plainEnd")})`;
  return {
    upSuction: {
      heading: "Suction at its start (Pa)",
      formula: (row) =>
        `IF(${at("asked", row)}=1,IF(${at("joining", row)}=0,${hood(row)}*${density}/2*(${fromInput(place, "wanted", row)}/${at("area", row)})^2,IF(${at("byFlows", row)}=0,${fastest(row)},${largestAtJunction(place, row)})),0)`,
    },
    arriving: {
      heading: "Arriving (m³/s)",
      formula: (row) =>
        `IF(${at("asked", row)}=1,IF(${at("joining", row)}=0,${fromInput(place, "wanted", row)},${joinedSum(place, "flow", row)}+${DISCHARGE_COEFFICIENT}*${joinedSum(place, "idleArea", row)}*SQRT(2*${at("upSuction", row)}/${density})),IF(${at("sideThere", row)}=2,SUMIF(${place.above("next", row)},0,${place.above("flow", row)}),0))`,
    },
    leakShare: {
      heading: "Leak area, share of the duct",
      formula: (row) =>
        `IF(${at("asked", row)}=1,${DISCHARGE_COEFFICIENT}*${at("leakThere", row)}/${at("area", row)},0)`,
    },
    leak: {
      heading: "Leak (m³/s)",
      formula: (row) => {
        const [g, arriving] = [at("leakShare", row), at("arriving", row)];
        return `IF(${g}=0,0,(${g}^2*${arriving}+${g}*SQRT(${arriving}^2+(1-${g}^2)*${at("area", row)}^2*2*${at("upSuction", row)}/${density}))/(1-${g}^2))`;
      },
    },
    flow: { heading: "Airflow (m³/s)", formula: (row) => `${at("arriving", row)}+${at("leak", row)}` },
    speed: { heading: "Velocity (m/s)", formula: (row) => `${at("flow", row)}/${at("area", row)}` },
    motion: { heading: "Velocity pressure (Pa)", formula: (row) => `${density}/2*${at("speed", row)}^2` },
    reynolds: {
      heading: "Reynolds number",
      formula: (row) => `${density}*${at("speed", row)}*${at("width", row)}/${AIR_VISCOSITY}`,
    },
  };
}

function losses(place: BudgetPlace): Cells {
  const at = place.cell;
  const ifCarries = (row: number, formula: string): string => `IF(${at("carries", row)}=1,${formula},0)`;
  const device = (row: number): string =>
    `IF(${fromInput(place, "deviceLoss", row)}>0,${fromInput(place, "deviceLoss", row)}*(${at("flow", row)}/${fromInput(place, "deviceAirflow", row)})^${fromInput(place, "deviceExponent", row)}*(${place.scalar("density")}/${num(STANDARD_DENSITY)})^MIN(MAX(${fromInput(place, "deviceExponent", row)}-1,0),1),0)`;
  return {
    friction: {
      heading: "Friction (Pa)",
      formula: (row) =>
        ifCarries(
          row,
          `(${fromInput(place, "length", row)}*${at("pipeFactor", row)}+${fromInput(place, "hose", row)}*${fromInput(place, "hoseTimes", row)}*${at("hoseFactor", row)})/${at("width", row)}*${at("motion", row)}`,
        ),
    },
    fittings: {
      heading: "Fittings (Pa)",
      formula: (row) => {
        const slower = `${fromInput(place, "mitreK", row)}*${moreInSlowAir(at("reynolds", row))}`;
        const named = `(${fromInput(place, "coefficient", row)}+${slower})*${at("motion", row)}`;
        const leaving = `(1-${fromInput(place, "exitK", row)})*${at("motion", row)}-${place.scalar("density")}/2*(${at("flow", row)}/${place.scalar("outletArea")})^2`;
        const leaves = `AND(${at("sideThere", row)}=2,${at("source", row)}=${place.scalar("exitRow")})`;
        return ifCarries(row, `${named}+IF(${leaves},${leaving},0)`);
      },
    },
    device: { heading: "Device (Pa)", formula: (row) => ifCarries(row, device(row)) },
    entry: {
      heading: "Hood entry (Pa)",
      formula: (row) => `IF(AND(${at("asked", row)}=1,${at("joining", row)}=0),${at("upSuction", row)},0)`,
    },
    endSuction: {
      heading: "Suction at its end, before its junction (Pa)",
      formula: (row) =>
        `IF(${at("asked", row)}=1,${at("upSuction", row)}+${at("friction", row)}+${at("fittings", row)}+${at("device", row)},0)`,
    },
    total: {
      heading: "Run loss (Pa)",
      formula: (row) =>
        ifCarries(
          row,
          `${at("entry", row)}+${at("friction", row)}+${at("fittings", row)}+${at("device", row)}+${at("meets", row)}`,
        ),
    },
    toFan: {
      heading: "Path loss to fan (Pa)",
      formula: (row) => `IF(${at("asked", row)}=1,${at("total", row)}+${onward(place, "toFan", row)},0)`,
    },
  };
}

function metal(place: BudgetPlace): Cells {
  const side = (row: number): string => place.cell("sideThere", row);
  return {
    dusts: {
      heading: "Runs that bring what burns, sparks, or may",
      formula: (row) => `IF(${side(row)}=1,${ownDust(place, row)}+${joinedSum(place, "dusts", row)},0)`,
    },
    met: { heading: "Sparks meet what burns: 2 surely, 1 likely", formula: (row) => metIn(place, row) },
  };
}

function shown(place: BudgetPlace): Cells {
  const at = place.cell;
  const idle = (row: number): string =>
    `IF(OR(${at("sideThere", row)}<>1,${at("cut", row)}=1),0,${DISCHARGE_COEFFICIENT}*${at("idleArea", row)}*SQRT(2*${at("junction", row)}/${place.scalar("density")}))`;
  const isLeaking = (row: number): string => `AND(${at("unheld", row)}=1,${at("cut", row)}=0,${at("idleArea", row)}>0)`;
  const notKnown = (row: number): string =>
    `OR(${isLeaking(row)},AND(${at("sideThere", row)}=2,${place.scalar("fanWaits")}<>0))`;
  const ended = (row: number): string => `${at("endSuction", row)}+${at("meets", row)}`;
  return {
    junction: {
      heading: "Suction at the junction (Pa)",
      formula: (row) => `IF(${at("sideThere", row)}=1,${onward(place, "base", row)},0)`,
    },
    base: {
      heading: "handed on (Pa)",
      formula: (row) => `IF(${at("asked", row)}=1,${at("upSuction", row)},${at("junction", row)})`,
    },
    airflow: {
      heading: "Airflow shown (m³/s)",
      formula: (row) => `IF(${notKnown(row)},NA(),IF(${at("carries", row)}=1,${at("flow", row)},${idle(row)}))`,
    },
    velocity: { heading: "Velocity shown (m/s)", formula: (row) => `${at("airflow", row)}/${at("area", row)}` },
    velocityPressure: {
      heading: "Velocity pressure shown (Pa)",
      formula: (row) => `${place.scalar("density")}/2*${at("velocity", row)}^2`,
    },
    endShown: {
      heading: "Suction at its end shown (Pa)",
      formula: (row) =>
        `IF(${at("unheld", row)}+${at("unmet", row)}>0,NA(),IF(${at("asked", row)}=1,${ended(row)},${at("junction", row)}))`,
    },
    governs: {
      heading: "Governs",
      formula: (row) =>
        `IF(${at("asked", row)}=1,IF(${at("next", row)}<0,NA(),IF(${at("next", row)}=0,1,IF(${ended(row)}>=${at("junction", row)}*(1-1E-9),1,0))),0)`,
    },
    ratio: {
      heading: "Junction / own suction",
      formula: (row) =>
        `IF(${at("asked", row)}=1,IF(${at("next", row)}<0,NA(),IF(${at("next", row)}=0,1,IF(${ended(row)}>0,${at("junction", row)}/(${ended(row)}),0))),0)`,
    },
  };
}
