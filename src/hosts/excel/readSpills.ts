import type { Extent } from "../../sheets/calculated";
import { columnsOf, isOneCell, rowsOf } from "../../sheets/rectangle";
import { rectangleAt } from "./rangeAt";
import { itemAt } from "../../reference/itemAt";

const AT_ONCE = 500; // formulas asked in one request

/** How far formulas fill the cells beside them, by the address of the formula; only those that do. */
export async function readSpills(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Excel.Range,
  formulas: readonly string[],
): Promise<Map<string, Extent>> {
  const spills = new Map<string, Extent>();
  if (formulas.length === 0 || (await hasNone(context, area))) return spills;
  for (let from = 0; from < formulas.length; from += AT_ONCE) {
    await ask(context, sheet, formulas.slice(from, from + AT_ONCE), spills);
  }
  return spills;
}

/** Asked first, since most sheets have no formula that fills other cells. */
async function hasNone(context: Excel.RequestContext, area: Excel.Range): Promise<boolean> {
  area.load("hasSpill");
  await context.sync();
  return area.hasSpill === false;
}

async function ask(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  formulas: readonly string[],
  spills: Map<string, Extent>,
): Promise<void> {
  const ranges = formulas.map((at) => sheet.getRange(at).getSpillingToRangeOrNullObject());
  for (const range of ranges) range.load("address");
  await context.sync();
  ranges.forEach((range, index) => {
    const filled = range.isNullObject ? null : rectangleAt(range.address);
    if (filled === null || isOneCell(filled)) return;
    spills.set(itemAt(formulas, index), { rows: rowsOf(filled), columns: columnsOf(filled) });
  });
}
