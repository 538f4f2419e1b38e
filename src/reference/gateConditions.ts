import { inches, millimetres } from "./asPrinted";
import type { GateConditionRow, Provenance } from "./schema";

const estimate: Provenance = {
  source: "commonPractice",
  locator: "estimate",
  basis: "common practice",
  checked: null,
};

const ESTIMATE = "Estimate of common practice, no published measurement found: measure yours.";
const WHOLE_RIM = Math.PI; // length of the rim / diameter

/**
 * What a slide gate leaks through, as a slot: leak area = gap x length, length = lengthPerDiameter x diameter.
 * The bare slot is the width that a common blade needs; the rest are guesses of the order of magnitude.
 */
export const gateConditions: readonly GateConditionRow[] = [
  {
    key: "open bare slot",
    label: "Open, the blade's slot bare",
    aliases: ["bare slot"],
    state: "open",
    gap: inches(3 / 16),
    lengthPerDiameter: 1,
    note: `${ESTIMATE} The blade is drawn out and its slot stands open to the room across the whole diameter.`,
    ...estimate,
  },
  {
    key: "open flapped slot",
    label: "Open, the blade's slot closed by a flap or self-cleaning blade",
    aliases: ["flapped slot", "open sealed slot"],
    state: "open",
    gap: millimetres(0.1),
    lengthPerDiameter: 1,
    note: `${ESTIMATE} A flap, brush or through-going blade covers the slot and leaves next to nothing.`,
    ...estimate,
  },
  {
    key: "shut seated",
    label: "Shut, the blade drawn onto its seat",
    aliases: ["seated"],
    state: "shut",
    gap: millimetres(0.02),
    lengthPerDiameter: WHOLE_RIM,
    note: `${ESTIMATE} The seat is on the suction side, so that suction presses the blade onto it.`,
    ...estimate,
  },
  {
    key: "shut wrong side",
    label: "Shut, the seat on the wrong side",
    aliases: ["wrong side"],
    state: "shut",
    gap: millimetres(0.5),
    lengthPerDiameter: WHOLE_RIM,
    note: `${ESTIMATE} Suction pulls the blade off its seat. The seal must be on the suction side: turn the gate round.`,
    ...estimate,
  },
  {
    key: "shut packed",
    label: "Shut, the groove packed with dust",
    aliases: ["packed"],
    state: "shut",
    gap: millimetres(2),
    lengthPerDiameter: 1,
    note: `${ESTIMATE} Packed dust stops the blade a few millimetres short of the end of its groove: clear the groove.`,
    ...estimate,
  },
  {
    key: "loose collar",
    label: "A loose collar, hose or pipe joint beside the gate",
    aliases: ["loose joint"],
    state: "either",
    gap: millimetres(0.3),
    lengthPerDiameter: WHOLE_RIM,
    note: `${ESTIMATE} The pipe or hose sits on the gate's collar without a clamp; leaks open or shut.`,
    ...estimate,
  },
  {
    key: "foam sealed",
    label: "Blade and collars sealed with a soft strip",
    aliases: ["foam"],
    state: "either",
    gap: millimetres(0.01),
    lengthPerDiameter: WHOLE_RIM,
    note: `${ESTIMATE} The best an owner does by hand; small, not nothing, and it wears.`,
    ...estimate,
  },
];
