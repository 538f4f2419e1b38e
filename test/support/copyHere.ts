import type { CopyMaker } from "../../src/hosts/copyInWorker";
import { gridModel } from "../../src/hosts/local/gridModel";
import { shownWith } from "../../src/hosts/local/readGrid";
import { makeCopy } from "../../src/hosts/makeCopy";

/** What the worker of a page does, without a worker: the copy is computed in the grid. */
export const copyHere: CopyMaker = (book, order, step, signal) =>
  makeCopy(
    book,
    order,
    (workbook) => shownWith(gridModel(workbook), workbook).shown,
    (index) => {
      step(index);
      signal.throwIfAborted();
    },
  );
