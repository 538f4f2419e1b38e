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

/** The times of a job, in seconds; the first ones warm up and are left out. */
export const jobTime = (job: () => void, rounds = 9): Measured =>
  measuredOf(warmed(Array.from({ length: rounds }, () => timeOf(job, 1) / 1000)));

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
