import type { Workbook } from "../../sheets/workbook";
import type { GridModel } from "./grid";

/** The page's part in what the pane asks: which grid is open now, and how a file or another workbook gets out and in. */
export interface Desk {
  readonly model: () => GridModel;
  readonly follow: (changed: () => void) => () => void;
  /** Opens another workbook; where work would be lost it asks first. False where the user kept what is there. */
  readonly open: (workbook: Workbook) => Promise<boolean>;
  readonly download: (bytes: Uint8Array, name: string) => void;
}
