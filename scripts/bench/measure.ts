/** The middle of several measurements, and the quarter of them below and above which the rest lie. */
export interface Measured {
  readonly middle: number;
  readonly from: number;
  readonly to: number;
}

/**
 * How many times as long one job takes as another: both in turn, round after round, and of the rounds' ratios the middle one,
 * so that a machine that is slower for a while is slower for both. The first rounds warm up and are left out.
 */
export function timeRatio(job: () => void, other: () => void, rounds = 41): Measured {
  const [repeats, otherRepeats] = [repeatsFor(job), repeatsFor(other)];
  return measuredOf(warmed(Array.from({ length: rounds }, () => timeOf(job, repeats) / timeOf(other, otherRepeats))));
}

/** The times of jobs, in seconds, in turn; the first ones warm up and are left out. */
export function jobTimes(jobs: readonly (() => void)[], rounds = 15): Measured[] {
  const all = jobs.map((): number[] => []);
  for (let round = 0; round < rounds; round++) jobs.forEach((job, which) => all[which]!.push(timeOf(job, 1) / 1000));
  return all.map((times) => measuredOf(warmed(times)));
}

/** How many times as long one takes as another, both measured in turn; the first rounds warm up and are left out. */
export async function ratioOf(
  one: () => Promise<number>,
  other: () => Promise<number>,
  rounds: number,
): Promise<Measured> {
  const all: number[] = [];
  for (let round = 0; round < rounds; round++) all.push((await one()) / (await other()));
  return measuredOf(warmed(all));
}

const TIMES = 5;

/** What several measure that wait for the same, each by itself, in turn. */
export async function inTurn(measures: readonly (() => Promise<number>)[]): Promise<Measured[]> {
  const all = measures.map((): number[] => []);
  for (let time = 0; time < TIMES; time++)
    for (const [which, measure] of measures.entries()) all[which]!.push(await measure());
  return all.map(measuredOf);
}

/** The time of a job's first call, in seconds: most of it may be the engine's, which has not compiled the job yet. */
export function firstTime(job: () => void): Measured {
  const took = timeOf(job, 1) / 1000;
  return { middle: took, from: took, to: took };
}

const WARM_TABLE = 1000; // ms; a function of a table runs so much code that fewer calls leave part of it to be compiled

/** Calls a job until the engine has compiled what it runs. */
export function warmUp(job: () => void): void {
  for (const start = performance.now(); performance.now() - start < WARM_TABLE;) job();
}

const warmed = (all: readonly number[]): readonly number[] => all.slice(Math.floor(all.length / 4));

/** The middle and the quarters of some numbers, at least one. */
export function measuredOf(all: readonly number[]): Measured {
  const sorted = [...all].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))]!;
  return { middle: at(0.5), from: at(0.25), to: at(0.75) };
}

/** The same measured in another unit. */
export const timesAll = ({ middle, from, to }: Measured, factor: number): Measured => ({
  middle: middle * factor,
  from: from * factor,
  to: to * factor,
});

function timeOf(job: () => void, repeats: number): number {
  const start = performance.now();
  for (let repeat = 0; repeat < repeats; repeat++) job();
  return (performance.now() - start) / repeats;
}

const LONG_ENOUGH = 5; // ms, far above what the clock can tell apart

const WARM = 200; // ms in which the engine has compiled what a job runs

/** How often a job must be repeated to last long enough, once it is warm: counted cold, a quick one would hardly ever be run. */
function repeatsFor(job: () => void): number {
  let repeats = 1;
  while (timeOf(job, repeats) * repeats < WARM) repeats *= 2;
  repeats = 1;
  while (timeOf(job, repeats) * repeats < LONG_ENOUGH) repeats *= 2;
  return repeats;
}
