import { builtFunctions } from "./builtFunctions";
import { firstTime, jobTimes, timesAll, warmUp } from "./measure";
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

/** What is asked of a table of so many runs, and how many milliseconds it may take. */
interface Asked {
  readonly name: string;
  readonly count: number;
  readonly args: readonly unknown[];
  readonly of?: string; // what else is in it
  readonly atMost?: number;
  readonly atFirst?: true; // its first call is told, too, which waits for the engine
}

const readings = [["Open", "At", "Velocity", "Suction"], ...[1, 2, 3, 4].flatMap(readingsOf)];

const asked: readonly Asked[] = [
  { name: "BUDGET", count: 40, args: [] },
  { name: "SOLVE", count: 40, args: [CURVE] },
  { name: "GAINS", count: 40, args: [CURVE, [["machine 5"]]], atMost: 5, atFirst: true },
  { name: "GAINS", count: 200, args: [CURVE, [["machine 5"]]], atMost: 100 },
  {
    name: "CALIBRATE",
    count: 40,
    args: [CURVE, readings],
    of: " and 12 readings with 4 sets of open gates",
    atMost: 60,
  },
  { name: "UNCERTAINTY", count: 40, args: [CURVE] },
];

/** The functions of whole tables, each call with another table; an older build's in turn with them. */
export function tables(dist: string, before: string | null): Row[] {
  const builds = [dist, ...(before === null ? [] : [before])].map(builtFunctions);
  return asked.flatMap(({ name, count, args, of = "", atMost, atFirst }) => {
    let call = 0;
    const jobs = builds.flatMap((functions) => {
      const compute = functions.get(name);
      return compute === undefined ? [] : [() => void compute(tableOf(count, call++), ...args)];
    });
    const what = `${name}, ${count} runs${of}`;
    const first = timesAll(firstTime(jobs[0]!), 1000);
    jobs.forEach(warmUp);
    const [now, then] = jobTimes(jobs).map((time) => timesAll(time, 1000));
    const took = milliseconds(what, now!, atMost === undefined ? null : { atMost });
    const row = { ...took, before: then ?? null };
    return atFirst === true ? [milliseconds(`${what}, the first call`, first), row] : [row];
  });
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
