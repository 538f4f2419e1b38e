import type { CurvePoint } from "../../src/core/fan/fanCurve";
import type { Run } from "../../src/core/network/network";
import {
  DENSITY,
  entry,
  FEW_ENOUGH,
  leakOf,
  type Line,
  Long,
  long,
  lossOf,
  MOST_STEPS,
  NONE,
  STANDARD,
  STILL,
  sum,
} from "./longLaws";

/** What flows in a network, by run; of those after the fan it says nothing. */
export interface LongState {
  readonly airflow: readonly Long[]; // [m3/s]
  readonly leak: readonly Long[]; // [m3/s]
  readonly suction: readonly Long[]; // [Pa] at the upstream end
}

interface Flows {
  readonly airflow: ArrayLike<number>;
  readonly leak: ArrayLike<number>;
  readonly suction: ArrayLike<number>;
}

/**
 * A solution, refined until it changes by less than 1e-25 of the fan's airflow: Newton's steps on the whole tree, each law written as a
 * line and eliminated from the ends to the fan.
 *
 * @param runs as `seededTree` draws them
 * @param fan at standard density: no airflow first, no pressure last; a straight line between
 * @param from where it begins; by run
 * @throws Error where it does not settle
 */
export function fortyDigits(runs: readonly Run[], fan: readonly CurvePoint[], from: Flows): LongState {
  const tree = treeOf(runs);
  const all = (values: ArrayLike<number>): Long[] => Array.from(values, long);
  const state = { airflow: all(from.airflow), leak: all(from.leak), suction: all(from.suction) };
  for (let step = 0; step < MOST_STEPS; step++) {
    const lines = toFan(tree, state);
    const change = toEnds(tree, state, lines, atInlet(tree, state, fan, lines.get(tree.last)!.down));
    if (change.lt(FEW_ENOUGH.times(state.airflow[tree.last]!))) return state;
  }
  throw new Error("the forty digits did not settle");
}

interface Tree {
  readonly runs: readonly Run[];
  readonly before: readonly (readonly number[])[]; // by run: those that join it
  readonly to: readonly number[]; // by run
  readonly order: readonly number[]; // suction runs, each after all that join it
  readonly last: number;
}

function treeOf(runs: readonly Run[]): Tree {
  const places = new Map(runs.map(({ name }, index) => [name, index]));
  const to = runs.map((run) => places.get(run.to) ?? -1);
  const before = runs.map((_, index) => runs.flatMap((__, one) => (to[one] === index ? [one] : [])));
  const order: number[] = [];
  const follow = (index: number): void => {
    before[index]!.forEach(follow);
    order.push(index);
  };
  const last = runs.findIndex((run) => run.to === "fan");
  follow(last);
  return { runs, before, to, order, last };
}

type State = { readonly [Key in keyof LongState]: Long[] };

/** What a run's airflow is by the suction at its upstream end, by its parts, and by that at its downstream end. */
interface Lines {
  readonly arriving: Line;
  readonly leaking: Line;
  readonly down: Line;
}

/** Runs that no air can enter have none. */
function toFan({ runs, before, order }: Tree, { airflow, leak }: State): Map<number, Lines> {
  const lines = new Map<number, Lines>();
  for (const index of order) {
    const run = runs[index]!;
    const flow = airflow[index]!;
    const arrives = flow.minus(leak[index]!);
    const joined = before[index]!.flatMap((one) => lines.get(one)?.down ?? []);
    const isEnd = before[index]!.length === 0 && run.gate !== "shut";
    if (!isEnd && joined.length === 0 && run.leakArea === 0) continue;
    const arriving = isEnd ? entry(run, arrives) : joined.reduce(sum, STILL);
    const leaking = leakOf(run, arriving, arrives, leak[index]!);
    const { a, b } = sum(arriving, leaking);
    const { pressure, slope } = lossOf(run, flow);
    const rate = b.div(slope.times(b).plus(1));
    const down = { a: a.minus(rate.times(pressure.plus(slope.times(a.minus(flow))))), b: rate };
    lines.set(index, { arriving, leaking, down });
  }
  return lines;
}

/** The suction at which the fan, less what the runs after it cost, meets what the network asks for. */
function atInlet({ runs, last }: Tree, { airflow }: State, fan: readonly CurvePoint[], { a, b }: Line): Long {
  const [shutOff, most] = [long(fan[0]!.pressure).times(DENSITY).div(STANDARD), long(fan.at(-1)!.airflow)];
  const now = airflow[last]!;
  const after = runs.filter(({ side }) => side === "discharge").map((run) => lossOf(run, now));
  const held = after.reduce((left, { pressure }) => left.minus(pressure), shutOff.times(long(1).minus(now.div(most))));
  const falls = after.reduce((rate, { slope }) => rate.plus(slope), shutOff.div(most));
  return held.minus(falls.times(a.minus(now))).div(falls.times(b).plus(1));
}

/** @returns by how much an airflow has changed, the largest of all */
function toEnds({ order, to, last }: Tree, state: State, lines: ReadonlyMap<number, Lines>, suctionAtFan: Long): Long {
  const { airflow, leak, suction } = state;
  let change = NONE;
  for (const index of [...order].reverse()) {
    const down = index === last ? suctionAtFan : suction[to[index]!]!;
    const line = lines.get(index);
    if (line === undefined) {
      [airflow[index], leak[index], suction[index]] = [NONE, NONE, down];
      continue;
    }
    const { a, b } = sum(line.arriving, line.leaking);
    const next = line.down.a.plus(line.down.b.times(down));
    change = Long.max(change, next.minus(airflow[index]!).abs());
    airflow[index] = next;
    suction[index] = next.minus(a).div(b);
    leak[index] = line.leaking.a.plus(line.leaking.b.times(suction[index]));
  }
  return change;
}

/** How far a solution lies from that: the largest difference of an airflow, a leak or a suction, each over the largest of its kind. */
export function farFrom(exact: LongState, flows: Flows): number {
  const far = (name: keyof Flows): Long => {
    const largest = Long.max(...exact[name].map((value) => value.abs()));
    if (largest.isZero()) return Long.max(...Array.from(flows[name], (value) => Math.abs(value)));
    return Long.max(...exact[name].map((value, index) => value.minus(flows[name][index]!).abs())).div(largest);
  };
  return Math.max(...(["airflow", "leak", "suction"] as const).map((name) => far(name).toNumber()));
}
