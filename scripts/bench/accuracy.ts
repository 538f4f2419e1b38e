import { farFrom, fortyDigits } from "../../test/support/fortyDigits";
import { seededTree } from "../../test/support/seededTree";
import { type Checkout, saidBy } from "./ofCheckout";
import { ratio, type Row } from "./row";
import { seededNetworks } from "./seededNetworks";

interface Answer {
  readonly status: string;
  readonly airflow: readonly number[];
  readonly leak: readonly number[];
  readonly suction: readonly number[];
}

const WHAT = `${seededNetworks.length} seeded networks: largest difference`;
const OVER = "largest airflow, leak or suction";
const GOAL = { atMost: 1e-12 };

/**
 * How far each build's answers lie from the same equations in forty digits, and, with two builds, from one another: where the two
 * differ, that tells which was right.
 *
 * @throws Error where the builds don't say alike whether a network has an answer
 */
export async function accuracy(builds: readonly Checkout[]): Promise<Row[]> {
  const said: Answer[][] = [];
  for (const build of builds) said.push(JSON.parse(await saidBy("answers", build)) as Answer[]);
  const [now, before] = [said[0]!, said[1]];
  const far = said.map(() => 0);
  let apart = 0;
  seededNetworks.forEach(({ seed, count, losses }, place) => {
    const { runs, curve } = seededTree(seed, count, losses);
    const exact = fortyDigits(runs, curve.points, now[place]!);
    said.forEach((answers, build) => (far[build] = Math.max(far[build]!, farFrom(exact, answers[place]!))));
    if (before === undefined) return;
    if (before[place]!.status !== now[place]!.status) throw new Error(`seed ${seed}, ${count} runs: another status`);
    apart = Math.max(apart, between(before[place]!, now[place]!));
  });
  const [ours, older] = far.map(always);
  return [
    { ...ratio(`${WHAT} to the equations in forty digits`, OVER, ours!, GOAL), before: older ?? null },
    ...(before === undefined ? [] : [ratio(`${WHAT} to the build before`, OVER, always(apart), GOAL)]),
  ];
}

const always = (value: number) => ({ middle: value, from: value, to: value });

const between = (one: Answer, other: Answer): number =>
  Math.max(
    ...(["airflow", "leak", "suction"] as const).map((name) => {
      const largest = Math.max(...one[name].map(Math.abs)) || 1;
      return Math.max(...one[name].map((value, run) => Math.abs(value - other[name][run]!))) / largest;
    }),
  );
