import { exampleCurve, exampleRuns } from "../exampleTables";
import { readChoice, singleCell } from "../arguments";
import { calibratedGainSpreads, calibratedSystem } from "../calibrationTable/calibratedGains";
import { calibrated } from "../calibrationTable/calibration";
import { toMatrix } from "../cells";
import { gainTable, goals, type HowSure } from "../flowTable/gainTable";
import { onFan } from "../flowTable/onFan";
import type { Formula, Guide } from "../guide";
import { rememberingAnswers } from "../remember";
import { ENOUGH_AIR } from "../../reference/noteLimits";
import { gainInWords } from "../uncertaintyTable/gainInWords";
import { gainSpreads } from "../uncertaintyTable/gainSpread";
import { readErrors } from "../uncertaintyTable/readErrors";

const remember = rememberingAnswers();

/**
 * What one change would give at a hood, best first: run, change, airflow gained, new velocity (cfm, fpm; SI: m³/h, m/s).
 * @customfunction GAINS
 * @param runs Table with headers Run, To, Diameter ... as for BUDGET
 * @param curve Fan curve, two columns: airflow cfm (SI: m³/h) and fan static pressure in.w.g. (SI: Pa), for standard air
 * @param hood Name of the run whose hood should get more air; "neediest": the open one that lacks most, which the answer names
 * @param [open] Names of the runs whose gates are open, between ; or , (all other gates shut); the table's gates when left out
 * @param [density] Air density, lb/ft³ (SI: kg/m³), one cell; standard air when left out
 * @param [units] "IP" (default) or "SI"
 * @param [goal] "air" (default): most air first. "work": first what carries the dust, then air for a hood that has too little
 * @param [errors] How far inputs may be off, as for UNCERTAINTY: each gain then has its ± (two standard deviations); none when left out
 * @param [readings] What was read, as for CALIBRATE: gains are then those of the calibrated ducts and fan, with the ± that readings leave
 * @returns table
 */
export function gains(
  runs: unknown[][],
  curve: unknown[][],
  hood: unknown[][],
  open?: unknown[][],
  density?: unknown[][],
  units?: unknown[][],
  goal?: unknown[][],
  errors?: unknown[][],
  readings?: unknown[][],
): unknown[][] {
  const asks = [...toMatrix(hood), ...toMatrix(goal), ["errors"], ...toMatrix(errors), ["readings"], ...toMatrix(readings)]; // prettier-ignore
  return onFan(remember, { runs, curve, open, asks, density, units }, ({ table, open: gates, fan, system }) => {
    const order = readChoice("goal", singleCell("goal", goal), goals);
    const off = readErrors(errors);
    const asked = { runs, curve, readings, open: open ?? null, errors, density: fan.density, system };
    const read = isThere(readings) ? calibrated(asked) : null;
    const used = read === null ? { table, fan } : calibratedSystem(read, runs, curve, system);
    const howSure: HowSure = (now, place) => {
      const spreadOf =
        read === null ? gainSpreads(now, place, used.fan, off) : calibratedGainSpreads(read, now, place, used.fan, off);
      return (gain) => gainInWords(gain, spreadOf(gain), system);
    };
    const isUnsure = read !== null || isThere(errors);
    return gainTable(used.table.runs(gates), used.fan, hood, order, system, isUnsure ? howSure : null);
  });
}

/** A range with nothing in it is left out; some hosts send a blank as 0. */
const isThere = (argument: unknown): boolean => toMatrix(argument).some((row) => row.some((cell) => cell !== null && cell !== 0)); // prettier-ignore

export const guide: Guide = {
  maths: "SOLVE again with one change at a time",
  source: "todiniPilati1988",
  basis: "from memory",
  limits: `One change at a time: two together do not give the sum. The neediest hood is the open one shortest of air, where one gets less than ${Math.round(100 * ENOUGH_AIR)} % of what it wants; else one in whose own duct dust settles (the lowest in the table); else, where dust settles further down, the one with the least share. Of equals it is the upper row; a hood that is called neediest is that hood. A ± is two standard deviations; an input is off by the same factor before and after, so a gain is surer than either airflow. With readings the model's error (the table input errors) is part of it, and diameters count as sure.`,
  cautions: ["power off", "tape and card"],
  also: ["improve", "more airflow", "more suction"],
  example: { asks: "What would help the saw", args: [exampleRuns, exampleCurve, "saw"] },
};

export const formula: Formula = {
  tex: ["\\Delta Q_\\text{hood} = Q_\\text{hood}(\\text{one change}) - Q_\\text{hood}(\\text{as it is})"],
  letters: { "Q_\\text{hood}": "airflow at the hood, each time solved as its own network (see SOLVE)" },
};
