import { referenceIn } from "./referenceIn";
import { PATIENT } from "./patient";
import type { Stock } from "./stock";
import { itemAt } from "../../reference/itemAt";

/** An addition that is under way, and what is known of it by now. */
export interface Begun {
  readonly stock: Pick<Stock, "ids" | "names">; // what stood there before
  readonly sheets: readonly string[]; // names of the sheets that are to be
  readonly names: readonly string[]; // of cells
  readonly made: string[]; // ids of the sheets made
}

const TRIES = 2; // a request that Excel refuses may have been carried out all the same

/**
 * Takes away every sheet and name of an addition that stopped halfway. Answers the names of sheets that would not go.
 * Where it stopped while the sheets were made, ours are known by their names, by not having been there before, and by
 * being blank still, so that no sheet of the user's is ever taken for ours.
 */
export async function undo(begun: Begun): Promise<readonly string[]> {
  for (let left = TRIES; left > 0; left--) {
    const isDone = await Excel.run(PATIENT, (context) => takeAway(context, begun)).then(
      () => true,
      () => false,
    );
    if (isDone) return [];
  }
  return begun.sheets;
}

async function takeAway(context: Excel.RequestContext, begun: Begun): Promise<void> {
  const { worksheets, names } = context.workbook;
  worksheets.load("items/id,items/name");
  names.load("items/name,items/formula");
  await context.sync();
  const there = worksheets.items.map(({ id, name }) => ({ id, name }));
  const ours = await sheetsOf(context, begun, there);
  for (const item of names.items) if (isOurs(item, begun, ours)) item.delete();
  for (const { id } of ours) remove(worksheets.getItem(id));
  await context.sync();
}

interface SheetThere {
  readonly id: string;
  readonly name: string;
}

async function sheetsOf(
  context: Excel.RequestContext,
  { stock, sheets, made }: Begun,
  there: readonly SheetThere[],
): Promise<SheetThere[]> {
  if (made.length > 0) return there.filter(({ id }) => made.includes(id));
  const fresh = there.filter(({ id, name }) => !stock.ids.includes(id) && sheets.includes(name));
  return fresh.length === 0 ? [] : blankOf(context, fresh);
}

async function blankOf(context: Excel.RequestContext, sheets: readonly SheetThere[]): Promise<SheetThere[]> {
  const used = sheets.map(({ id }) => context.workbook.worksheets.getItem(id).getUsedRangeOrNullObject(true));
  for (const range of used) range.load("address");
  await context.sync();
  return sheets.filter((_, index) => itemAt(used, index).isNullObject);
}

/** A name that was not there before, that we were to give, and that points to a sheet of ours. */
function isOurs({ name, formula }: Excel.NamedItem, begun: Begun, ours: readonly SheetThere[]): boolean {
  const target = referenceIn(String(formula))?.sheet;
  return begun.names.includes(name) && !begun.stock.names.includes(name) && ours.some((sheet) => sheet.name === target);
}

/** A sheet that is very hidden cannot be deleted. */
function remove(sheet: Excel.Worksheet): void {
  sheet.visibility = "Hidden";
  sheet.delete();
}
