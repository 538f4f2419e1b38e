/** Numbers that look random and are the same in every run (mulberry32, a public-domain generator). */
export function seeded(seed: number) {
  let state = seed;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    between: (low: number, high: number): number => low + (high - low) * next(),
    /** Evenly over the orders of magnitude. */
    scale: (low: number, high: number): number => low * (high / low) ** next(),
    pick: <Item>(items: readonly Item[]): Item => items[Math.floor(next() * items.length)]!,
    maybe: <Item>(item: Item, share = 0.7): Item | null => (next() < share ? item : null),
  };
}

export type Random = ReturnType<typeof seeded>;
