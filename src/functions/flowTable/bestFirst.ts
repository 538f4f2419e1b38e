/** Gains that differ by no more than this share of the hood's airflow are equal: a solver's last digits say nothing. */
const SAME_GAIN = 1e-9;

/**
 * Gains from the largest to the smallest. Those equal to one another stay in the order in which they came, that of the table.
 *
 * @param before [m3/s] the hood's airflow as it is
 */
export function bestFirst<Gain extends { readonly gained: number }>(gains: readonly Gain[], before: number): Gain[] {
  const equals: { readonly best: number; readonly members: [number, Gain][] }[] = [];
  for (const one of [...gains.entries()].sort(([, a], [, b]) => b.gained - a.gained)) {
    const [, { gained }] = one;
    const last = equals.at(-1);
    if (last !== undefined && last.best - gained <= SAME_GAIN * before) last.members.push(one);
    else equals.push({ best: gained, members: [one] });
  }
  return equals.flatMap(({ members }) => members.sort(([a], [b]) => a - b).map(([, gain]) => gain));
}
