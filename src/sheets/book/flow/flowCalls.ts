import type { Frame } from "../frame";
import { fanCurve, OPEN_CELL, runsTable } from "../layout";
import { curveInUse, eitherOf, readingsRange, runsInUse, sealedRunsInUse } from "../parts/inUse";
import { ERRORS } from "./flowLayout";

/** The whole-table formulas of the sheet Flow without their =. */
const surroundings = (frame: Frame): string => `${frame.name("density")},${frame.name("units")}`;

/** As the notes beside a table quote it: a choice between two would be no formula that anyone reads. */
export const quotedCall = {
  solve: (frame: Frame): string =>
    `DUCT.SOLVE(${runsTable(frame)},${fanCurve(frame)},${OPEN_CELL},${surroundings(frame)})`,
  uncertainty: (frame: Frame): string =>
    `DUCT.UNCERTAINTY(${runsTable(frame)},${fanCurve(frame)},${OPEN_CELL},${ERRORS},${surroundings(frame)})`,
  scenarios: (frame: Frame, sets: string): string =>
    `DUCT.SCENARIOS(${runsTable(frame)},${fanCurve(frame)},${sets},${surroundings(frame)})`,
  gains: (frame: Frame, hood: string): string =>
    `DUCT.GAINS(${runsTable(frame)},${fanCurve(frame)},${hood},${OPEN_CELL},${surroundings(frame)},"work",${ERRORS})`,
} as const;

export const solveCall = (frame: Frame, leaks: "with leaks" | "sealed" = "with leaks"): string =>
  `DUCT.SOLVE(${leaks === "sealed" ? sealedRunsInUse(frame) : runsInUse(frame)},${curveInUse(frame)},${OPEN_CELL},${surroundings(frame)})`;

/** Of a calibrated system the ± is what the readings leave of it. Readings are handed over only then: some programs work out both sides of a choice. */
export function uncertaintyCall(frame: Frame): string {
  const system = `${runsTable(frame)},${fanCurve(frame)}`;
  const plain = quotedCall.uncertainty(frame);
  if (!frame.has("measured")) return plain;
  const readings = eitherOf(frame, readingsRange(frame), '""');
  return eitherOf(
    frame,
    `DUCT.CALIBRATEDUNCERTAINTY(${system},${readings},${OPEN_CELL},${ERRORS},${surroundings(frame)})`,
    plain,
  );
}

export const scenariosCall = (frame: Frame, sets: string): string =>
  `DUCT.SCENARIOS(${runsInUse(frame)},${curveInUse(frame)},${sets},${surroundings(frame)})`;

/** Of a calibrated system it is told what was read: the ± of a gain is then what the readings leave of it. */
export function gainsCall(frame: Frame, hood: string): string {
  const plain = quotedCall.gains(frame, hood);
  if (!frame.has("measured")) return plain;
  return eitherOf(frame, `${plain.slice(0, -1)},${readingsRange(frame)})`, plain);
}
