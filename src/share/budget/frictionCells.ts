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
  const wall = (roughness: "roughness" | "hoseWall", row: number): string =>
    `IF(${place.cell("sideThere", row)}=0,0,INDEX(${place.all(roughness)},${place.cell("source", row)}))/${place.cell("width", row)}/3.7`;
  const pipe = (row: number): string => wall("roughness", row);
  const hose = (row: number): string => wall("hoseWall", row);
  // Colebrook-White is used from Re 4000 on; below, its value there is one end of a line.
  const turbulent = (row: number): string => `MAX(${place.cell("reynolds", row)},${TURBULENT_START})`;
  const step = (of: (row: number) => string, before: FlowColumn) => (row: number) =>
    newton(of(row), turbulent(row), place.cell(before, row));
  return {
    pipe0: { heading: "Pipe: Haaland", formula: (row) => haaland(pipe(row), turbulent(row)) },
    pipe1: { heading: "step 1", formula: step(pipe, "pipe0") },
    pipe2: { heading: "step 2", formula: step(pipe, "pipe1") },
    pipe3: { heading: "step 3", formula: step(pipe, "pipe2") },
    pipeFactor: { heading: "Friction factor of pipe", formula: (row) => factor(place, "pipe3", row) },
    hose0: { heading: "Hose: Haaland", formula: (row) => haaland(hose(row), turbulent(row)) },
    hose1: { heading: "step 1", formula: step(hose, "hose0") },
    hose2: { heading: "step 2", formula: step(hose, "hose1") },
    hose3: { heading: "step 3", formula: step(hose, "hose2") },
    hoseFactor: { heading: "Friction factor of hose", formula: (row) => factor(place, "hose3", row) },
  };
}

/**
 * A start of 1/sqrt(f), within 2 % of Colebrook-White.
 *
 * @param wall (e/D)/3.7 as a formula
 * @param reynolds at least 4000
 */
export const haaland = (wall: string, reynolds: string): string => `(0-1.8)/LN(10)*LN((${wall})^1.11+6.9/${reynolds})`;

/** 1/sqrt(f) one Newton step further on. */
export function newton(wall: string, reynolds: string, before: string): string {
  const b = `2.51/${reynolds}`;
  const inside = `(${wall}+${b}*${before})`;
  return `${before}-(${before}+${TO_DECIMAL}*LN(${inside}))/(1+${TO_DECIMAL}*(${b})/${inside})`;
}

function factor(place: BudgetPlace, solved: FlowColumn, row: number): string {
  const [re, x] = [place.cell("reynolds", row), place.cell(solved, row)];
  const between = `${laminar}+(${re}-${LAMINAR_END})/${BAND}*(1/${x}^2-${laminar})`;
  return `IF(${re}<=0,0,IF(${re}<=${LAMINAR_END},64/${re},IF(${re}>=${TURBULENT_START},1/${x}^2,${between})))`;
}
