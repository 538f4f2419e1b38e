import type { Wheel } from "../../core/claims/judgeFan";
import { findNamed } from "../../core/naming/findNamed";
import { type ClaimBoundRow, claimBounds } from "../../reference/claimBounds";
import { type WheelKind, wheelKinds } from "../../reference/wheelKinds";
import type { Facts } from "./facts";

const SECONDS = 60; // in a minute: speed comes in rpm

export const kindOf = (facts: Facts): WheelKind | undefined => findNamed(wheelKinds, facts["wheel kind"] ?? "");

/** The best efficiency that the wheel's kind usually has; of any kind where it is not told. */
export const usualEfficiency = (facts: Facts): ClaimBoundRow =>
  kindOf(facts)?.efficiency ?? claimBounds.backwardEfficiency;

/** The wheel, as far as it is told; null without its size or speed. */
export function wheelOf(facts: Facts): Wheel | null {
  const { "impeller diameter": diameter, speed, stages = null } = facts;
  if (diameter === undefined || speed === undefined) return null;
  return { diameter, speed: speed / SECONDS, stages, bounded: kindOf(facts)?.bounded ?? null };
}
