/**
 * How many times as long one job takes as another: both in turn, round after round, and of the rounds' ratios the middle one,
 * so that a machine that is slower for a while is slower for both. The first rounds warm up and are left out.
 */
export function timeRatio(job: () => void, other: () => void, rounds = 41): number {
  const [repeats, otherRepeats] = [repeatsFor(job), repeatsFor(other)];
  const ratios = Array.from({ length: rounds }, () => timeOf(job, repeats) / timeOf(other, otherRepeats));
  return ratios.slice(Math.floor(rounds / 4)).sort((a, b) => a - b)[Math.floor((rounds - Math.floor(rounds / 4)) / 2)]!;
}

/** The middle of the times of a job, in seconds; the first ones warm up and are left out. */
export function middleTime(job: () => void, rounds = 15): number {
  const times = Array.from({ length: rounds }, () => timeOf(job, 1) / 1000).slice(Math.floor(rounds / 3));
  return times.sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
}

function timeOf(job: () => void, repeats: number): number {
  const start = performance.now();
  for (let repeat = 0; repeat < repeats; repeat++) job();
  return (performance.now() - start) / repeats;
}

const LONG_ENOUGH = 5; // ms, far above what the clock can tell apart

/** How often a job must be repeated to last long enough. */
function repeatsFor(job: () => void): number {
  let repeats = 1;
  while (timeOf(job, repeats) * repeats < LONG_ENOUGH) repeats *= 2;
  return repeats;
}
