import { type ClaimBoundRow, claimBounds } from "./claimBounds";

/** A kind of fan wheel, as a data sheet names it. */
export interface WheelKind {
  readonly key: string;
  readonly aliases: readonly string[];
  readonly bounded: boolean; // whether a stage of it makes at most ρu²: its blades do not lean forward, and the air passes them once
  readonly efficiency: ClaimBoundRow | null; // its usual best; null where none is known here
  readonly flow: ClaimBoundRow | null; // its usual highest flow coefficient; likewise
}

export const wheelKinds: readonly WheelKind[] = [
  {
    key: "backward",
    aliases: ["backward curved", "backward inclined", "airfoil"],
    bounded: true,
    efficiency: claimBounds.backwardEfficiency,
    flow: claimBounds.backwardFlow,
  },
  {
    key: "radial",
    aliases: ["paddle", "straight"],
    bounded: true,
    efficiency: claimBounds.efficiency,
    flow: claimBounds.radialFlow,
  },
  {
    key: "forward-curved",
    aliases: ["forward", "squirrel cage"],
    bounded: false,
    efficiency: claimBounds.efficiency,
    flow: claimBounds.forwardFlow,
  },
  { key: "side-channel", aliases: ["regenerative"], bounded: false, efficiency: null, flow: null },
  { key: "axial", aliases: [], bounded: false, efficiency: null, flow: null },
];
