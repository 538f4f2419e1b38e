import { copyInWorker } from "../copyInWorker";
import type { SheetHost } from "../host";
import { addNewSheets } from "./addNewSheets";
import { sentenceOf } from "./faults";
import { follow } from "./follow";
import { openExample } from "./openExample";
import { readBook } from "./readBook";
import { repair } from "./repair";
import { revive } from "./revive";
import { goTo, insert, selectionAddress } from "./selection";
import { shareCopy } from "./shareCopy";
import { writeBlocks } from "./writeBlocks";

const addSheets: SheetHost["addSheets"] = (order, watch) =>
  addNewSheets(async (stock) => {
    const { budgetBook } = await import("../../sheets/book/budgetBook");
    return budgetBook(order, stock);
  }, watch);

/** Excel as the pane sees it. What is big is fetched only when it is asked for, so that the pane shows itself soon. */
export const excelHost = (makeCopy = copyInWorker): SheetHost => ({
  kind: "excel",
  selectionAddress: said(selectionAddress),
  insert: said(insert),
  write: said(writeBlocks),
  goTo: said(goTo),
  follow,
  readBook: said(readBook),
  repair: said(repair),
  shareCopy: (kind, watch) => shareCopy(kind, watch, makeCopy),
  revive,
  addSheets,
  openExample: (units, watch) => openExample(units, (order) => addSheets(order, watch)),
});

/** The same action, whose failure is a sentence for the user in place of Excel's own words. */
const said =
  <Given extends unknown[], Answer>(act: (...given: Given) => Promise<Answer>) =>
  (...given: Given): Promise<Answer> =>
    act(...given).catch((fault: unknown) => {
      throw new Error(sentenceOf(fault), { cause: fault });
    });
