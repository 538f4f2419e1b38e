import { lots } from "../../support/lots";

/** Values drawn by lot from a seed. */
export function seeded(seed: number) {
  const next = lots(seed);
  return {
    between: (low: number, high: number): number => low + (high - low) * next(),
    /** Evenly over the orders of magnitude. */
    scale: (low: number, high: number): number => low * (high / low) ** next(),
    pick: <Item>(items: readonly Item[]): Item => items[Math.floor(next() * items.length)]!,
    maybe: <Item>(item: Item, share = 0.7): Item | null => (next() < share ? item : null),
  };
}

export type Random = ReturnType<typeof seeded>;
