import { byAngle } from "../points";
import type { LossFamily, Provenance } from "../schema";
import { singleEntry } from "./singleEntry";

const osha: Provenance = {
  source: "osha1910_94",
  locator: "notes to Tables G-4 to G-7",
  basis: "read",
  checked: "2026-11-27",
};
const acgih: Provenance = {
  source: "acgihMemory",
  locator: "Fig 5-12 and 5-13, hood entry losses",
  basis: "from memory",
  checked: null,
};

// Usual 90: wider than the best taper (45), so that a name without a number is not flattered.
const taper = { name: "included angle", usual: 90 } as const;

/** Hoods of machines and booths, and the tapered hoods of the exhaust manual. */
export const machineHoods: readonly LossFamily[] = [
  singleEntry({
    key: "grinder hood",
    aliases: ["grinding hood", "buffer hood"],
    label: "Grinder or buffer hood, straight take-off",
    note: "Any such hood but that of a vertical spindle disc. An exhaust manual from memory has the same.",
    k: 0.65,
    from: osha,
  }),
  singleEntry({
    key: "grinder hood tapered",
    aliases: ["buffer hood tapered"],
    label: "Grinder or buffer hood, tapered take-off",
    note: "Disagrees with grinder hood tapered manual (0.40).",
    k: 0.45,
    from: osha,
  }),
  singleEntry({
    key: "grinder hood tapered manual",
    aliases: [],
    label: "Grinder hood, tapered take-off, exhaust manual",
    note: "Disagrees with grinder hood tapered (0.45, read).",
    k: 0.4,
    from: acgih,
  }),
  singleEntry({
    key: "trap",
    aliases: ["settling chamber"],
    label: "Trap or settling chamber",
    note: "Coefficient of entry 0.63.",
    k: 1.5,
    from: acgih,
  }),
  singleEntry({
    key: "booth",
    aliases: ["direct branch booth"],
    label: "Booth with a branch straight off its wall",
    note: "Coefficient of entry 0.82.",
    k: 0.5,
    from: acgih,
  }),
  singleEntry({
    key: "booth rounded",
    aliases: ["booth with rounded entry"],
    label: "Booth with a rounded entry to the branch",
    note: "Upper end of the 0.06 to 0.10 remembered.",
    k: 0.1,
    from: acgih,
  }),
  {
    key: "tapered hood round",
    aliases: ["tapered hood", "hood tapered round"],
    kind: "hood",
    label: "Tapered hood, round face",
    note: "Face area at least twice the duct area. Ignores the hood's length; the cone tables, which were read, replace it.",
    shape: null,
    angle: taper,
    rule: "table",
    points: byAngle(acgih, [
      [15, 0.15],
      [30, 0.08],
      [45, 0.06],
      [60, 0.08],
      [90, 0.15],
      [120, 0.26],
      [150, 0.4],
      [180, 0.5],
    ]),
  },
  {
    key: "tapered hood square",
    aliases: ["tapered hood rectangular", "hood tapered square"],
    kind: "hood",
    label: "Tapered hood, square or rectangular face",
    note: "Face area at least twice the duct area; the larger of the two sides' angles. The cone tables, which were read, replace it.",
    shape: null,
    angle: taper,
    rule: "table",
    points: byAngle(acgih, [
      [15, 0.25],
      [30, 0.16],
      [45, 0.15],
      [60, 0.17],
      [90, 0.25],
      [120, 0.35],
      [150, 0.48],
      [180, 0.62],
    ]),
  },
];
