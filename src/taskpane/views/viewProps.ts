import type { SheetHost } from "../../hosts/host";
import type { UnitSystem } from "../../reference/quantities";
import type { ViewName } from "./views";

/** What every view is given: the sheet, where there is one, and the way to another view. */
export interface ViewProps {
  readonly host: SheetHost | null;
  readonly go: (view: ViewName) => void;
}

/** The units of the sheets that a view would add; chosen in one view, they are chosen in the other. */
export interface UnitsProps {
  readonly units: UnitSystem;
  readonly chooseUnits: (units: UnitSystem) => void;
}
