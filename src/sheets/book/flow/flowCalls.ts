import type { Frame } from "../frame";
import { fanCurve, OPEN_CELL, runsTable, runsWithoutLeaks } from "../layout";

/** The whole-table formulas of the sheet Flow without their =. */
const surroundings = (frame: Frame): string => `${frame.name("density")},${frame.name("units")}`;

export const solveCall = (frame: Frame, leaks: "with leaks" | "sealed" = "with leaks"): string =>
  `DUCT.SOLVE(${leaks === "sealed" ? runsWithoutLeaks(frame) : runsTable(frame)},${fanCurve(frame)},${OPEN_CELL},${surroundings(frame)})`;

export const uncertaintyCall = (frame: Frame, errors: string): string =>
  `DUCT.UNCERTAINTY(${runsTable(frame)},${fanCurve(frame)},${OPEN_CELL},${errors},${surroundings(frame)})`;

export const scenariosCall = (frame: Frame, sets: string): string =>
  `DUCT.SCENARIOS(${runsTable(frame)},${fanCurve(frame)},${sets},${surroundings(frame)})`;

export const gainsCall = (frame: Frame, hood: string): string =>
  `DUCT.GAINS(${runsTable(frame)},${fanCurve(frame)},${hood},${OPEN_CELL},${surroundings(frame)},"work")`;
