import { LAMINAR_END, LAMINAR_END_FACTOR, TURBULENT_START } from "../../core/friction/flowRegime";
import { num } from "../translate/expressions/text";
import type { BudgetPlace, ColumnCells, FlowColumn } from "./blockNames";

const BAND = TURBULENT_START - LAMINAR_END;
const laminar = num(LAMINAR_END_FACTOR);
const TO_DECIMAL = "2/LN(10)"; // 2 log10(y) = 2/ln(10) ln(y)

/**
 * Friction factors of pipe and hose, each in a few cells: x = 1/sqrt(f) starts at Haaland's value, within 2 % of
 * Colebrook-White, and three Newton steps on x + 2 log10(a + b x) bring it to the last digits.
 */
export function frictionCells(place: BudgetPlace): Partial<ColumnCells<FlowColumn>> {
  const pipe = (row: number): string =>
    `INDEX(${place.all("roughness")},${place.cell("source", row)})/${place.cell("width", row)}`;
  const hose = (row: number): string =>
    `INDEX(${place.all("hoseWall")},${place.cell("source", row)})/${place.cell("width", row)}`;
  return {
    pipe0: { heading: "Pipe: Haaland", formula: (row) => haaland(place, pipe(row), row) },
    pipe1: { heading: "step 1", formula: (row) => newton(place, pipe(row), "pipe0", row) },
    pipe2: { heading: "step 2", formula: (row) => newton(place, pipe(row), "pipe1", row) },
    pipe3: { heading: "step 3", formula: (row) => newton(place, pipe(row), "pipe2", row) },
    pipeFactor: { heading: "Friction factor of pipe", formula: (row) => factor(place, "pipe3", row) },
    hose0: { heading: "Hose: Haaland", formula: (row) => haaland(place, hose(row), row) },
    hose1: { heading: "step 1", formula: (row) => newton(place, hose(row), "hose0", row) },
    hose2: { heading: "step 2", formula: (row) => newton(place, hose(row), "hose1", row) },
    hose3: { heading: "step 3", formula: (row) => newton(place, hose(row), "hose2", row) },
    hoseFactor: { heading: "Friction factor of hose", formula: (row) => factor(place, "hose3", row) },
  };
}

/** Colebrook-White is used from Re 4000 on; below, its value there is one end of a line. */
const turbulent = (place: BudgetPlace, row: number): string => `MAX(${place.cell("reynolds", row)},${TURBULENT_START})`;

const haaland = (place: BudgetPlace, roughness: string, row: number): string =>
  `(0-1.8)/LN(10)*LN((${roughness}/3.7)^1.11+6.9/${turbulent(place, row)})`;

function newton(place: BudgetPlace, roughness: string, before: FlowColumn, row: number): string {
  const x = place.cell(before, row);
  const b = `2.51/${turbulent(place, row)}`;
  const inside = `(${roughness}/3.7+${b}*${x})`;
  return `${x}-(${x}+${TO_DECIMAL}*LN(${inside}))/(1+${TO_DECIMAL}*(${b})/${inside})`;
}

function factor(place: BudgetPlace, solved: FlowColumn, row: number): string {
  const [re, x] = [place.cell("reynolds", row), place.cell(solved, row)];
  const between = `${laminar}+(${re}-${LAMINAR_END})/${BAND}*(1/${x}^2-${laminar})`;
  return `IF(${re}<=0,0,IF(${re}<=${LAMINAR_END},64/${re},IF(${re}>=${TURBULENT_START},1/${x}^2,${between})))`;
}
