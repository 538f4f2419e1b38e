import { alone } from "../points";
import type { LossFamily, Provenance } from "../schema";

/** A hood entry of one coefficient, whatever its size and angle. */
export const singleEntry = (
  key: string,
  aliases: readonly string[],
  label: string,
  note: string,
  from: Provenance,
  k: number,
): LossFamily => ({
  key,
  aliases,
  kind: "hood",
  label,
  note,
  shape: null,
  angle: null,
  rule: "table",
  points: [alone(from, k)],
});
