import { builtFunctions } from "./builtFunctions";
import { middleTime } from "./measure";
import { type Row, seconds } from "./row";

const MACHINES = 39;
const GOAL = 0.06; // s

/** CALIBRATE over forty runs and fifteen readings, each call with another reading, so that nothing is remembered. */
export function calibration(dist: string): Row {
  const calibrate = builtFunctions(dist).get("CALIBRATE")!;
  const machine = (index: number): unknown[] => [`machine ${index + 1}`, "main", 5, 10 + index, 3, "flanged end", "branch 30", "open", 0.2, 0.2]; // prettier-ignore
  const runs = [
    ["Run", "To", "Diameter", "Length", "Flex", "Hood", "Fittings", "Gate", "Leak open", "Leak shut"],
    ...Array.from({ length: MACHINES }, (_, index) => machine(index)),
    ["main", "fan", 12, 20, "", "", "", "", "", ""],
  ];
  const curve = [[0, 20], [5000, 16], [10_000, 8], [13_000, 0]]; // prettier-ignore
  const open = (set: number): string =>
    Array.from({ length: 8 }, (_, index) => `machine ${8 * set + index - 7}`).join(";");
  const readings = (call: number): unknown[][] => [
    ["Open", "At", "Velocity", "Suction"],
    ...[1, 2, 3, 4].flatMap((set) => [
      [open(set), `machine ${8 * set}`, 7200 - 200 * set + call, ""],
      [open(set), `machine ${8 * set - 3}`, 7400 - 220 * set, ""],
      [open(set), "fan", "", 15.5],
    ]),
    [open(1), "main", "", 13.4],
    [open(2), "main", "", 13.6],
    [open(3), "machine 18", "", 4.7],
  ];
  let call = 0;
  const time = middleTime(() => calibrate(runs, curve, readings(call++)));
  return seconds("CALIBRATE, 40 runs and 15 readings with 4 sets of open gates", time, { atMost: GOAL });
}
