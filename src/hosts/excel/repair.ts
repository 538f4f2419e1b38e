import { cellAddress } from "../../sheets/address";
import type { RepairOutcome, Watch } from "../host";
import { callsOurs, withTypedNames } from "../../sheets/ourCalls";
import { cellsIn, filledAddresses, placesIn, type Rectangle } from "../../sheets/rectangle";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import { TEXT } from "../../sheets/textCells";
import { BUSY_TURNS, isBusy, PAUSE } from "./busy";
import { rangeAt } from "./rangeAt";
import { type Keyed, stretchesOf } from "./blocks";
import { isEditing } from "./faults";
import { isFormula } from "./isFormula";
import { type Band, readInBands } from "./readInBands";
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
  const outcome = {
    repaired: 0,
    stillWrong: [] as string[],
    protectedSheets: [] as string[],
    textCells: [] as string[],
  };
  for (const [done, name] of names.entries()) {
    if (signal.aborted) return outcome;
    progress(done, names.length, name);
    const one = await Excel.run((context) => repairSheet(context, name, signal));
    outcome.repaired += one.repaired;
    outcome.stillWrong.push(...one.stillWrong.map((at) => `${sheetPrefix(name)}${at}`));
    outcome.textCells.push(...one.textCells.map((at) => `${sheetPrefix(name)}${at}`));
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
  readonly textCells: readonly string[];
  readonly isProtected: boolean;
}

async function repairSheet(context: Excel.RequestContext, name: string, signal: AbortSignal): Promise<SheetOutcome> {
  const sheet = context.workbook.worksheets.getItem(name);
  const { protection } = sheet;
  protection.load("protected");
  await context.sync();
  const all = await brokenCells(context, sheet);
  if (all.length > 0 && protection.protected)
    return { repaired: 0, stillWrong: all.map(addressOfCell), textCells: [], isProtected: true };
  const [broken, asText] = [all.filter(({ isText }) => !isText), all.filter(({ isText }) => isText)];
  const textCells = asText.map(addressOfCell);
  if (broken.length === 0) return { repaired: 0, stillWrong: [], textCells, isProtected: false };
  const formulas = new Map(broken.map((cell) => [addressOfCell(cell), cell]));
  const stretches = stretchesOf(broken.map((cell) => ({ ...cell, key: "" })));
  let repaired = 0;
  for (let from = 0; from < stretches.length; from += AT_ONCE)
    repaired += await enter(context, sheet, stretches.slice(from, from + AT_ONCE), formulas);
  const stillBroken = async (): Promise<Broken[]> =>
    (await brokenCells(context, sheet)).filter(({ isText }) => !isText);
  let left = await stillBroken();
  for (let turn = 1; turn < BUSY_TURNS && !signal.aborted && left.some(({ waits }) => waits); turn++) {
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
    left = await stillBroken();
  }
  return { repaired, stillWrong: left.map(addressOfCell), textCells, isProtected: false };
}

/**
 * Where a stretch holds something else by now, as when a row was inserted above it, it is left alone. Where Excel refuses some, as a part of
 * an array formula of the old kind, each is entered by itself. What stays broken is named then.
 *
 * @returns how many cells were to be entered
 */
async function enter(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  stretches: readonly Rectangle[],
  formulas: ReadonlyMap<string, Broken>,
): Promise<number> {
  const found = stretches.map((stretch) => ({ stretch, range: rangeAt(sheet, stretch) }));
  for (const { range } of found) range.load("formulas");
  await context.sync();
  const still = found.filter(({ stretch, range }) => isSame(range.formulas, formulasIn(stretch, formulas, "held")));
  for (const { stretch, range } of still) range.formulas = formulasIn(stretch, formulas, "formula");
  try {
    await context.sync();
  } catch (fault) {
    if (isEditing(fault)) throw fault;
    const left = still.map(({ stretch }) => stretch);
    const parts = left.length > 1 ? left : left.flatMap(cellsOf);
    if (parts.length > 1) for (const part of parts) await enter(context, sheet, [part], formulas);
  }
  return still.reduce((sum, { stretch }) => sum + cellsIn(stretch), 0);
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const cellsOf = (stretch: Rectangle): Rectangle[] =>
  placesIn(stretch)
    .flat()
    .map(({ column, row }) => ({ top: row, left: column, bottom: row, right: column }));

interface Broken extends Omit<Keyed, "key"> {
  readonly held: string; // as Excel shows it
  readonly formula: string; // in the form that Excel understands
  readonly waits: boolean; // for its answer
  readonly isText: boolean; // its cell was formatted as text since: entered anew it would be its own letters, which a sum passes over
}

const addressOfCell = ({ column, row }: Broken): string => cellAddress(column, row);

async function brokenCells(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<Broken[]> {
  const broken: Broken[] = [];
  const used = sheet.getUsedRangeOrNullObject(true);
  const take = ({ row, column, range, formulas, values }: Band): void =>
    formulas.forEach((line, down) =>
      line.forEach((formula: unknown, right) => {
        const value = itemAt(values, down)[right];
        const waits = isBusy(value);
        if ((value !== UNKNOWN && !waits) || !isFormula(formula, value) || !callsOurs(formula)) return;
        const isText = itemAt(range.numberFormat as unknown[][], down)[right] === TEXT;
        const place = { row: row + down, column: column + right };
        broken.push({ ...place, held: formula, formula: withTypedNames(formula), waits, isText });
      }),
    );
  await readInBands(context, used, take, (band) => band.load("numberFormat"));
  // a cell that a formula fills may answer with that formula, but holds none
  const spills = await readSpills(context, sheet, used, broken.map(addressOfCell));
  const filled = new Set([...spills].flatMap(([at, extent]) => filledAddresses(at, extent).slice(1)));
  return broken.filter((cell) => !filled.has(addressOfCell(cell)));
}

const formulasIn = (stretch: Rectangle, formulas: ReadonlyMap<string, Broken>, which: "held" | "formula"): string[][] =>
  placesIn(stretch).map((line) => line.map(({ column, row }) => valueAt(formulas, cellAddress(column, row))[which]));
