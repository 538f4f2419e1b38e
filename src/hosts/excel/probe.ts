import { freeName } from "../../sheets/freeName";
import { BUSY_TURNS, isBusy, PAUSE } from "./busy";
import { PATIENT } from "./patient";
import type { Stock } from "./stock";
import { type Begun, undo } from "./undo";

const FORMULA = "=DUCT.AREA(1)"; // answers a number in whatever workbook
const UNKNOWN = "#NAME?";
const UNKNOWN_TURNS = 3; // the names may be on their way when the pane has only just opened

const CLICK = "Excel does not know the DUCT functions yet. Click Home › Add-ins › Duct Ledger, then try again.";
const LATER = "The DUCT functions do not answer yet. Wait until Excel has finished calculating, then try again.";

/**
 * Why formulas of ours cannot be entered now, in a sentence; null if they can. A formula that is entered while Excel
 * does not know its function stays at #NAME? for good, so one is tried first, on a sheet that is taken away again.
 */
export async function whyUnready(stock: Stock, signal: AbortSignal): Promise<string | null> {
  const name = freeName("Duct check", stock.sheets);
  const begun: Begun = { stock, sheets: [name], names: [], made: [] };
  let why: string | null = null;
  let left: readonly string[] = [];
  try {
    why = await Excel.run(PATIENT, async (context) => whyNot(context, await addSheet(context, begun), signal));
  } finally {
    left = await undo(begun);
  }
  return left.length === 0
    ? why
    : `Excel keeps the sheet ${name}, which was only for a check. Please delete it by hand.`;
}

async function addSheet(context: Excel.RequestContext, { sheets: [name], made }: Begun): Promise<Excel.Range> {
  const sheet = context.workbook.worksheets.add(name);
  sheet.load("id");
  await context.sync();
  made.push(sheet.id);
  return sheet.getRange("A1");
}

async function whyNot(context: Excel.RequestContext, cell: Excel.Range, signal: AbortSignal): Promise<string | null> {
  let shown = await shownBy(context, cell, true);
  for (let turn = 1; shown === UNKNOWN && turn < UNKNOWN_TURNS; turn++) {
    await pause(signal);
    shown = await shownBy(context, cell, true);
  }
  for (let turn = 1; isBusy(shown) && turn < BUSY_TURNS; turn++) {
    await pause(signal);
    shown = await shownBy(context, cell, false);
  }
  if (typeof shown === "number") return null;
  return isBusy(shown) ? LATER : CLICK;
}

async function shownBy(context: Excel.RequestContext, cell: Excel.Range, enter: boolean): Promise<unknown> {
  if (enter) cell.formulas = [[FORMULA]];
  cell.load("values");
  await context.sync();
  const [[shown]] = cell.values as [[unknown]];
  return shown;
}

async function pause(signal: AbortSignal): Promise<void> {
  signal.throwIfAborted();
  await new Promise((resolve) => setTimeout(resolve, PAUSE));
  signal.throwIfAborted();
}
