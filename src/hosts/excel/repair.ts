import { cellAddress } from "../../sheets/address";
import type { RepairOutcome, Watch } from "../host";
import { callsOurs, withTypedNames } from "../../sheets/ourCalls";
import { filledAddresses, placesIn, type Rectangle } from "../../sheets/rectangle";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import { BUSY_TURNS, isBusy, PAUSE } from "./busy";
import { rangeAt } from "./rangeAt";
import { type Keyed, stretchesOf } from "./blocks";
import { isEditing } from "./faults";
import { isFormula } from "./isFormula";
import { readInBands } from "./readInBands";
import { readSpills } from "./readSpills";
import { itemAt, valueAt } from "../../reference/itemAt";

const UNKNOWN = "#NAME?";
const AT_ONCE = 500; // stretches of cells written in one request

/**
 * Re-enters every formula of ours that stands at #NAME?, since Excel never computes it again by itself, or at #BUSY!, since it
 * may stay there for good.
 */
export async function repair({ progress, signal }: Watch): Promise<RepairOutcome> {
  const names = await Excel.run(sheetNames);
  const outcome = { repaired: 0, stillWrong: [] as string[], protectedSheets: [] as string[] };
  for (const [done, name] of names.entries()) {
    if (signal.aborted) return outcome;
    progress(done, names.length, name);
    const one = await Excel.run((context) => repairSheet(context, name, signal));
    outcome.repaired += one.repaired;
    outcome.stillWrong.push(...one.stillWrong.map((at) => `${sheetPrefix(name)}${at}`));
    if (one.isProtected) outcome.protectedSheets.push(name);
  }
  progress(names.length, names.length, "Done");
  return outcome;
}

async function sheetNames(context: Excel.RequestContext): Promise<string[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  return worksheets.items.map(({ name }) => name);
}

interface SheetOutcome {
  readonly repaired: number;
  readonly stillWrong: readonly string[];
  readonly isProtected: boolean;
}

async function repairSheet(context: Excel.RequestContext, name: string, signal: AbortSignal): Promise<SheetOutcome> {
  const sheet = context.workbook.worksheets.getItem(name);
  const { protection } = sheet;
  protection.load("protected");
  await context.sync();
  const broken = await brokenCells(context, sheet);
  if (broken.length === 0) return { repaired: 0, stillWrong: [], isProtected: false };
  if (protection.protected) return { repaired: 0, stillWrong: broken.map(addressOfCell), isProtected: true };
  const formulas = new Map(broken.map((cell) => [addressOfCell(cell), cell.formula]));
  const stretches = stretchesOf(broken.map((cell) => ({ ...cell, key: "" })));
  for (let from = 0; from < stretches.length; from += AT_ONCE)
    await enter(context, sheet, stretches.slice(from, from + AT_ONCE), formulas);
  let left = await brokenCells(context, sheet);
  for (let turn = 1; turn < BUSY_TURNS && !signal.aborted && left.some(({ waits }) => waits); turn++) {
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
    left = await brokenCells(context, sheet);
  }
  return { repaired: broken.length, stillWrong: left.map(addressOfCell), isProtected: false };
}

/** Where Excel refuses some, as a part of an array formula of the old kind, each is entered by itself: what stays broken is named then. */
async function enter(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  stretches: readonly Rectangle[],
  formulas: ReadonlyMap<string, string>,
): Promise<void> {
  for (const stretch of stretches) rangeAt(sheet, stretch).formulas = formulasIn(stretch, formulas);
  try {
    await context.sync();
  } catch (fault) {
    if (isEditing(fault)) throw fault;
    const parts = stretches.length > 1 ? stretches : stretches.flatMap(cellsOf);
    if (parts.length > 1) for (const part of parts) await enter(context, sheet, [part], formulas);
  }
}

const cellsOf = (stretch: Rectangle): Rectangle[] =>
  placesIn(stretch)
    .flat()
    .map(({ column, row }) => ({ top: row, left: column, bottom: row, right: column }));

interface Broken extends Omit<Keyed, "key"> {
  readonly formula: string; // in the form that Excel understands
  readonly waits: boolean; // for its answer
}

const addressOfCell = ({ column, row }: Broken): string => cellAddress(column, row);

async function brokenCells(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<Broken[]> {
  const broken: Broken[] = [];
  const used = sheet.getUsedRangeOrNullObject(true);
  await readInBands(context, used, async ({ row, column, formulas, values }) => {
    formulas.forEach((line, down) =>
      line.forEach((formula: unknown, right) => {
        const value = itemAt(values, down)[right];
        const waits = isBusy(value);
        if ((value !== UNKNOWN && !waits) || !isFormula(formula, value) || !callsOurs(formula)) return;
        broken.push({ row: row + down, column: column + right, formula: withTypedNames(formula), waits });
      }),
    );
  });
  // a cell that a formula fills may answer with that formula, but holds none
  const spills = await readSpills(context, sheet, used, broken.map(addressOfCell));
  const filled = new Set([...spills].flatMap(([at, extent]) => filledAddresses(at, extent).slice(1)));
  return broken.filter((cell) => !filled.has(addressOfCell(cell)));
}

const formulasIn = (stretch: Rectangle, formulas: ReadonlyMap<string, string>): string[][] =>
  placesIn(stretch).map((line) => line.map(({ column, row }) => valueAt(formulas, cellAddress(column, row))));
