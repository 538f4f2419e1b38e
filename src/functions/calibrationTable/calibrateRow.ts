import { calibrateColumns, type CalibrateKey } from "../../reference/answerColumns";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, type Value } from "../answerRows";

/** What stands in some columns of a row of CALIBRATE, each number in the unit that the row names. */
export type CalibrateCells = Readonly<Partial<Record<CalibrateKey, Value>>>;

export const calibrateRow = (of: CalibrateCells, system: UnitSystem): Value[] =>
  answerRow(calibrateColumns, of, system);
