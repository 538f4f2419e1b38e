import type { SheetHost } from "../../hosts/host";
import type { ViewName } from "./views";

/** What every view is given: the sheet, where there is one, and the way to another view. */
export interface ViewProps {
  readonly host: SheetHost | null;
  readonly go: (view: ViewName) => void;
}
