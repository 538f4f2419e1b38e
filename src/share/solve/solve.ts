import { columnsOf, rowsOf } from "../../sheets/rectangle";
import { type BlockColumn, blockCells, blockHeight, blockPlace } from "../budget/block";
import { type BudgetBlock, budgetBlock } from "../budget/budget";
import { onAnySheet } from "../formula/ranges";
import { type Argument, type CallContext, fixed, type Translation, type Translator } from "../translate/translation";
import { hasHump } from "../translate/hasHump";
import { unitsOf, unitsStand } from "../translate/unitsOf";
import type { CurveGiven } from "../translate/expressions/fanCurve";
import { curveInSI } from "./curveInSI";
import { junctionCells, legCells } from "./meetingCells";
import { missedOf } from "./missed";
import { answerCells } from "./solveAnswer";
import {
  type SolveColumn,
  solveColumnNames,
  type SolvePlace,
  type SolveScalar,
  solveScalarNames,
  SWEEPS,
} from "./solveNames";
import { noteOfRun } from "./solveNotes";
import { scalarCells } from "./solveScalars";
import { type Column, stillCells } from "./stillCells";
import { lossCells, startCells, walkCells } from "./sweepCells";

/** Each sweep over more rows than this would make a copy too large to open with pleasure. */
const MOST_ROWS = 60;

/** SOLVE as plain formulas: the sweeps of the core, so many of them, each a block of columns beside the one before it. */
export const solve: Translator = ([runs, curve, open, density, units], context) => {
  const system = unitsOf(units ?? null, context);
  if (system === null) return fixed("its units are worked out by a formula or are none");
  if (curve?.range === undefined || columnsOf(curve.range) !== 2) return fixed("its curve is not two columns of cells");
  if (open != null && open.range !== undefined && (rowsOf(open.range) > 1 || columnsOf(open.range) > 1))
    return fixed("its open gates stand in several cells");
  if (hasHump(curve))
    return fixed("its fan's curve has a hump, and where ducts meet one plain formulas cannot find honestly");
  const block = budgetBlock(runs ?? null, density ?? null, system, unitsStand(units ?? null, context), context);
  if (typeof block === "string") return fixed(block);
  if (block.table.rows > MOST_ROWS) return fixed(`its runs table has more than ${MOST_ROWS} rows`);
  return solved(block, { ...curve, range: curve.range }, open ?? null, context);
};

function solved(block: BudgetBlock, given: CurveGiven, open: Argument | null, context: CallContext): Translation {
  const { place: budget, table, system } = block;
  const curve = curveInSI(given, system, context.workings);
  const openCell = open === null ? null : onAnySheet(open.text, context.sheet);
  let answer: string[][] = [];
  const width = Math.max(solveColumnNames.length, solveScalarNames.length);
  context.workings.place(blockHeight(table.rows), width, (there) => {
    const place = blockPlace<SolveColumn, SolveScalar>(there, table.rows, solveColumnNames, solveScalarNames);
    answer = answerCells(place, budget, system);
    const title = `Airflows of ${context.sheet}!${context.at}: in SI, by the order of the flow`;
    const singles = scalarCells(place, budget, curve, openCell, table.columns.includes("Gate"));
    return blockCells(title, table.rows, columnsOfBlock(place, block), singles);
  });
  return { kind: "cells", formulas: answer };
}

function columnsOfBlock(place: SolvePlace, { place: budget, system }: BudgetBlock): BlockColumn<SolveColumn>[] {
  const behind = (columns: Readonly<Record<string, Column>>, sweep: number): [string, Column][] =>
    Object.entries(columns).map(([name, column]) => [`${name}${sweep}`, column]);
  const sweeps = Array.from({ length: SWEEPS }, (_, index) => index + 1);
  const columns = new Map<string, Column>([
    ...Object.entries(stillCells(place, budget)),
    ...behind(startCells(place, budget), 0),
    ...sweeps.flatMap((sweep) => [
      ...behind(lossCells(place, sweep), sweep),
      ...behind(legCells(place, budget, sweep), sweep),
      ...behind(junctionCells(place, budget, sweep), sweep),
      ...behind(walkCells(place, budget, sweep), sweep),
    ]),
    ...behind(lossCells(place, SWEEPS + 1), SWEEPS + 1),
    ...behind(legCells(place, budget, SWEEPS + 1), SWEEPS + 1),
    ["missed", { heading: "Misses its equations by (Pa)", formula: (row) => missedOf(place, row) }],
    ["note", { heading: "Note", formula: (row) => noteOfRun(place, budget, system, row) }],
  ]);
  return solveColumnNames.map((name) => ({ name, ...columns.get(name)! }));
}
