import { columnLetters } from "../../address";
import { ERRORS } from "../flow/flowLayout";
import type { Frame } from "../frame";
import { CALIBRATED, fanCurve, RUNS_HEADER, runsRange, runsTable, SYSTEM_CELL, tableWithoutLeaks } from "../layout";
import { LAST_READING, READINGS, READINGS_COLUMN, READINGS_LAST } from "../measured/layout";

/**
 * The ducts and the fan by which the sheets say what flows: as they were typed, or as the readings of the sheet Measured make them. One cell of the sheet Flow
 * says which; without the sheet Measured there is nothing to choose.
 */
export const runsInUse = (frame: Frame): string =>
  frame.has("measured") ? eitherOf(frame, calibrated(frame, "RUNS"), runsTable(frame)) : runsTable(frame);

export const curveInUse = (frame: Frame): string =>
  frame.has("measured") ? eitherOf(frame, calibrated(frame, "CURVE"), fanCurve(frame)) : fanCurve(frame);

/** Those runs without their leaks. A calibrated table may have a column more than the typed one, so its own header is looked at. */
export function sealedRunsInUse(frame: Frame): string {
  const typed = tableWithoutLeaks(frame.ref("runs", runsRange(RUNS_HEADER)), runsTable(frame));
  if (!frame.has("measured")) return typed;
  const table = calibrated(frame, "RUNS");
  return eitherOf(frame, tableWithoutLeaks(`INDEX(${table},1,0)`, table), typed);
}

/** One formula or another by the choice; a copy keeps the one that is chosen on its day, and knows it by these words. */
export const eitherOf = (frame: Frame, asCalibrated: string, asEntered: string): string =>
  `IF(${chosen(frame)}="${CALIBRATED}",${asCalibrated},${asEntered})`;

const chosen = (frame: Frame): string => frame.ref("flow", SYSTEM_CELL);

export const readingsRange = (frame: Frame): string =>
  frame.ref("measured", `$${columnLetters(READINGS_COLUMN)}$${READINGS}:$${LAST_READING}$${READINGS_LAST}`);

const calibrated = (frame: Frame, what: "RUNS" | "CURVE"): string =>
  `DUCT.CALIBRATED${what}(${runsTable(frame)},${fanCurve(frame)},${readingsRange(frame)},${frame.ref("flow", ERRORS)},${frame.name("density")},${frame.name("units")})`;
