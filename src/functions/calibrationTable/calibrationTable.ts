import { calibrateColumns } from "../../reference/answerColumns";
import type { UnitSystem } from "../../reference/quantities";
import { headerRow, type Value } from "../answerRows";
import { calibrateRow } from "./calibrateRow";
import type { Calibration } from "./calibration";
import { inputRows } from "./inputRows";
import { readingRows } from "./readingRows";
import { shortRows } from "./shortRows";

/** The answer of CALIBRATE: a header, what it comes to, a row for each input that readings tell of, a row for each reading. */
export function calibrationTable(calibration: Calibration, system: UnitSystem): Value[][] {
  const inputs = inputRows(calibration);
  const rows = [...shortRows(calibration, inputs, system), ...inputs.rows, ...readingRows(calibration, system)];
  return [headerRow(calibrateColumns, system), ...rows.map((row) => calibrateRow(row, system))];
}
