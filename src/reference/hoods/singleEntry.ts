import { alone } from "../points";
import type { LossFamily, Provenance } from "../schema";

interface SingleEntry extends Pick<LossFamily, "key" | "aliases" | "label" | "note"> {
  readonly k: number;
  readonly from: Provenance;
}

/** A hood entry of one coefficient, whatever its size and angle. */
export const singleEntry = ({ k, from, ...named }: SingleEntry): LossFamily => ({
  ...named,
  kind: "hood",
  shape: null,
  angle: null,
  rule: "table",
  points: [alone(from, k)],
});
