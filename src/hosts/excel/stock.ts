import { isManual } from "./manual";
import { type Marks, readMarks } from "./marks";
import type { Taken } from "../../sheets/book/parts/taken";

/** What stands in the open workbook before anything is added. */
export interface Stock extends Required<Taken> {
  readonly ids: readonly string[]; // of the sheets
  readonly isLocked: boolean; // whether sheets may not be added
  readonly isManual: boolean; // whether Excel computes only when asked
}

export async function takeStock(context: Excel.RequestContext): Promise<Stock> {
  const { worksheets, names, tables, protection, application } = context.workbook;
  worksheets.load("items/id,items/name");
  names.load("items/name,items/formula");
  tables.load("items/name");
  protection.load("protected");
  application.load("calculationMode");
  await context.sync();
  const marks: Marks = await readMarks(context, worksheets.items, names.items);
  return {
    ids: worksheets.items.map(({ id }) => id),
    sheets: worksheets.items.map(({ name }) => name),
    names: [...names.items, ...tables.items].map(({ name }) => name), // cells and tables share one set of words
    isLocked: protection.protected,
    isManual: isManual(application),
    ...marks,
  };
}
