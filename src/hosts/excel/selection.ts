import type { InsertOutcome, Insertion } from "../host";
import { readRange } from "../../sheets/rangeRef";
import { rangeAt, withoutSheet } from "./rangeAt";
import { readsItself } from "./readsItself";
import { isBusy } from "./busy";
import { isEditing } from "./faults";
import { asLiteral } from "./literal";

const PAUSE = 200; // ms
const MOST_TURNS = 10;

/** Several areas may be selected at once; the first stands for them. */
const firstArea = (context: Excel.RequestContext): Excel.Range =>
  context.workbook.getSelectedRanges().areas.getItemAt(0);

export const selectionAddress = (): Promise<string> =>
  Excel.run(async (context) => {
    const area = firstArea(context);
    area.load("address");
    await context.sync();
    return area.address;
  });

/** A formula that shows nothing fills its cell all the same, and so does the blank part of a formula's answer. */
const isBlank = ({ formulas, values, hasSpill }: Pick<Excel.Range, "formulas" | "values" | "hasSpill">): boolean =>
  hasSpill === false && [...formulas, ...values].flat().every((content) => content === "");

export const insert = (content: Insertion, over?: string): Promise<InsertOutcome> =>
  Excel.run(async (context) => {
    const cell = over === undefined ? firstArea(context).getCell(0, 0) : await cellCalled(context, over);
    cell.load("address,formulas,values,hasSpill,numberFormat");
    await context.sync();
    const at = withoutSheet(cell.address);
    if (over === undefined && !isBlank(cell)) return { written: false, at: cell.address, why: "filled" };
    const place = readRange(cell.address, "");
    if ("formula" in content && place !== null && readsItself(content.formula, place))
      return { written: false, at, why: "itself" };
    if ("formula" in content) cell.formulas = [[content.formula]];
    else cell.values = [[typeof content.value === "string" ? asLiteral(content.value, String(cell.numberFormat[0]?.[0])) : content.value]]; // prettier-ignore
    const isRefused = await context.sync().then(
      () => false,
      (fault: unknown) => {
        if (isEditing(fault)) throw fault;
        return true; // the sheet is protected, or the formula is none
      },
    );
    if (isRefused) return { written: false, at, why: "refused" };
    const shown = await shownWhenReady(context, cell).catch(() => null); // as while somebody types: it is written all the same
    return {
      written: true,
      at,
      isBlocked: shown === "#SPILL!",
      ...(isKeptAsText(content, shown) ? { isText: true } : {}),
    };
  });

/** A cell formatted as text takes a formula for its letters, and a number for a text that sums pass over. */
const isKeptAsText = (content: Insertion, shown: unknown): boolean =>
  "formula" in content ? shown === content.formula : typeof content.value === "number" && typeof shown === "string";

/** A function of ours answers some time after its formula was entered; an answer that never comes is not waited for. */
async function shownWhenReady(context: Excel.RequestContext, cell: Excel.Range): Promise<unknown> {
  let shown = await shownBy(context, cell);
  for (let turn = 0; isBusy(shown) && turn < MOST_TURNS; turn++) {
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
    shown = await shownBy(context, cell);
  }
  return shown;
}

async function shownBy(context: Excel.RequestContext, cell: Excel.Range): Promise<unknown> {
  cell.load("values");
  await context.sync();
  return cell.values[0]?.[0];
}

/** The cell that an address with its sheet names. */
async function cellCalled(context: Excel.RequestContext, address: string): Promise<Excel.Range> {
  const place = readRange(address, "");
  if (place === null) throw new Error(`${address} is no cell`);
  return rangeAt(await sheetCalled(context, place.sheet), place);
}

async function sheetCalled(context: Excel.RequestContext, name: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load("visibility");
  await context.sync();
  if (sheet.isNullObject) throw new Error(`there is no sheet called ${name} any more: look again`);
  return sheet;
}

export const goTo = (sheet: string, at: string): Promise<void> =>
  Excel.run(async (context) => {
    const there = await sheetCalled(context, sheet);
    if (there.visibility !== "Visible")
      throw new Error(`the sheet ${sheet} is hidden: right-click a sheet's tab and choose Unhide`);
    there.activate();
    there.getRange(at).select();
    await context.sync();
  });
