import type { CopyOrder } from "../share/copy";
import type { Compute } from "../share/recomputed";
import type { Calculated } from "../sheets/calculated";
import { gridModel } from "./local/gridModel";
import { addPlugins } from "./local/plugins";
import { shownWith } from "./local/readGrid";
import { type MadeCopy, makeCopy } from "./makeCopy";

/** Makes a copy in a worker of its own, with the grid of the local sheet to compute it: neither the page nor Excel waits for it. */
export interface AskedOfCopier {
  readonly book: Calculated;
  readonly order: CopyOrder;
}

export type ToldByCopier = { readonly step: number } | { readonly made: MadeCopy } | { readonly failed: string };

declare const importScripts: (...addresses: string[]) => void;

const worker = globalThis as unknown as {
  onmessage: (event: MessageEvent<AskedOfCopier>) => void;
  postMessage: (message: ToldByCopier) => void;
};

let hasGrid = false;

/** A copy has no formula of ours left, so that the grid needs none of our functions. */
const compute: Compute = (workbook) => {
  if (!hasGrid) {
    importScripts("vendor/owl.iife.min.js", "vendor/o_spreadsheet.min.iife.js");
    addPlugins();
    hasGrid = true;
  }
  return shownWith(gridModel(workbook), workbook).shown;
};

worker.onmessage = ({ data: { book, order } }) => {
  makeCopy(book, order, compute, (step) => worker.postMessage({ step })).then(
    (made) => worker.postMessage({ made }),
    (error: unknown) => worker.postMessage({ failed: error instanceof Error ? error.message : String(error) }),
  );
};
