import type { Workbook } from "../../sheets/workbook";
import type { Change } from "../host";
import type { GridModel } from "./grid";
import type { OpenBook } from "./openBook";

/** The page's part in what the pane asks: which grid is open now, and how a file or another workbook gets out and in. */
export interface Desk {
  readonly model: () => GridModel;
  readonly workbook: () => Workbook; // what stands in it; a sheet that nobody touched is the very object of last time
  readonly follow: (changed: (what: Change) => void) => () => void;
  /** Opens another workbook; where work would be lost it asks first. False where the user kept what is there. */
  readonly open: (book: OpenBook, what: string) => Promise<boolean>;
  readonly download: (bytes: Uint8Array, name: string) => void;
}
