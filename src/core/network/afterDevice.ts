import type { Network } from "./network";

/**
 * Which runs have a separator or another device in them, or get all their air through one: that air is taken to be clean,
 * so that no dust settles there for want of velocity. What joins from aside brings dust again.
 *
 * @returns true for each such suction run, in the order of the runs
 * @source house
 */
export function afterDevice({ runs, joining, order }: Network): boolean[] {
  const clean = new Array<boolean>(runs.length).fill(false);
  for (const index of order) {
    const before = joining[index]!;
    clean[index] = runs[index]!.device !== null || (before.length > 0 && before.every((other) => clean[other]));
  }
  return clean;
}
