import { budgetBook } from "../../sheets/book/budgetBook";
import { takenIn } from "../../sheets/book/parts/taken";
import type { SheetOrder } from "../../sheets/book/order";
import type { Workbook } from "../../sheets/workbook";
import type { AddOutcome, Watch } from "../host";
import { appendSheets } from "./appendPlugin";
import { calculatedOf } from "./readGrid";
import type { GridModel } from "./grid";
import { gridData } from "./model";
import { nextTurn } from "./nextTurn";
import { itemAt } from "../../reference/itemAt";

/** Adds the ordered sheets behind those that are there, in one step that one undo takes back. */
export const addSheets = (model: GridModel, order: SheetOrder, watch: Watch): Promise<AddOutcome> =>
  append(model, watch, () => budgetBook(order, takenIn(calculatedOf(model).workbook)));

/** Appends a whole workbook; its sheets must not be called like those that are there. */
export async function append(model: GridModel, watch: Watch, make: () => Workbook): Promise<AddOutcome> {
  watch.progress(0, 2, "Laying out the sheets");
  await nextTurn(); // a click on Cancel comes through
  if (watch.signal.aborted) return CANCELLED;
  const workbook = make();
  const sheets = workbook.sheets.map(({ name }) => name);
  if (sheets.length === 0) return { added: false, why: "There is no sheet to add." };
  const ids = sheets.map(() => model.uuidGenerator.uuidv4());
  watch.progress(1, 2, `Writing ${sheets.join(", ")}`);
  await nextTurn();
  if (watch.signal.aborted) return CANCELLED;
  const data = gridData(workbook, (index) => itemAt(ids, index));
  if (!(await appendSheets(model, data)))
    return { added: false, why: "The sheet refused a part of what was to be added, so nothing was." };
  watch.progress(2, 2, "Done");
  return { added: true, sheets };
}

const CANCELLED: AddOutcome = { added: false, why: "Cancelled: nothing was added." };
