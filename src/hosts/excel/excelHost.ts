import type { SheetHost } from "../host";
import { addNewSheets } from "./addNewSheets";
import { follow } from "./follow";
import { readBook } from "./readBook";
import { repair } from "./repair";
import { revive } from "./revive";
import { goTo, insert, isSelectionEmpty, selectionAddress } from "./selection";
import { shareCopy } from "./shareCopy";

/** Excel as the pane sees it. What is big is fetched only when it is asked for, so that the pane shows itself soon. */
export const excelHost = (): SheetHost => ({
  kind: "excel",
  selectionAddress,
  isSelectionEmpty,
  insert,
  goTo,
  follow,
  readBook,
  repair,
  shareCopy,
  revive,
  addSheets: (order, watch) =>
    addNewSheets(async (stock) => {
      const { budgetBook } = await import("../../sheets/book/budgetBook");
      return budgetBook(order, stock);
    }, watch),
});
