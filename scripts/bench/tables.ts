import { builtFunctions } from "./builtFunctions";
import { jobTime, timesAll } from "./measure";
import { milliseconds, type Row } from "./row";

const CURVE = [[0, 20], [5000, 16], [10_000, 8], [13_000, 0]]; // prettier-ignore

/** So many hoods with hose, gate and leak on one main, the first of them a bit longer with every call, so that nothing is remembered. */
function tableOf(count: number, call: number): unknown[][] {
  const machine = (index: number): unknown[] => [`machine ${index + 1}`, "main", 250, 5, 10 + index + (index === 0 ? call / 1000 : 0), 3, "flanged end", "branch 30", "open", 0.2, 0.2]; // prettier-ignore
  return [
    ["Run", "To", "Airflow", "Diameter", "Length", "Flex", "Hood", "Fittings", "Gate", "Leak open", "Leak shut"],
    ...Array.from({ length: count - 1 }, (_, index) => machine(index)),
    ["main", "fan", "", 12, 20, "", "", "", "", "", ""],
  ];
}

/** The functions of whole tables, each call with another table. */
export function tables(dist: string): Row[] {
  const functions = builtFunctions(dist);
  const timed = (name: string, count: number, ...args: unknown[]) => {
    let call = 0;
    return timesAll(
      jobTime(() => functions.get(name)!(tableOf(count, call++), ...args)),
      1000,
    );
  };
  const readings = [["Open", "At", "Velocity", "Suction"], ...[1, 2, 3, 4].flatMap(readingsOf)];
  return [
    milliseconds("BUDGET, 40 runs", timed("BUDGET", 40)),
    milliseconds("SOLVE, 40 runs", timed("SOLVE", 40, CURVE)),
    milliseconds("GAINS, 40 runs", timed("GAINS", 40, CURVE, [["machine 5"]]), { atMost: 5 }),
    milliseconds("GAINS, 200 runs", timed("GAINS", 200, CURVE, [["machine 5"]]), { atMost: 100 }),
    milliseconds("CALIBRATE, 40 runs and 12 readings with 4 sets of open gates", timed("CALIBRATE", 40, CURVE, readings), { atMost: 60 }), // prettier-ignore
  ];
}

/** A velocity at two machines and the suction at the fan, with eight gates open. */
function readingsOf(set: number): unknown[][] {
  const open = Array.from({ length: 8 }, (_, index) => `machine ${8 * set + index - 7}`).join(";");
  return [
    [open, `machine ${8 * set}`, 7200 - 200 * set, ""],
    [open, `machine ${8 * set - 3}`, 7400 - 220 * set, ""],
    [open, "fan", "", 15.5],
  ];
}
