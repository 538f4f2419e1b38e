import { byShape } from "../points";
import type { LossFamily, Provenance, ShapeAxis } from "../schema";
import { singleEntry } from "./singleEntry";

/**
 * What a pipe end counts as where no hood is named. 0.93 is the exhaust manual's figure for a bare duct end; 1.0 holds for
 * a thin-walled end that stands free, 0.9 is older. The spread is a tenth of a velocity pressure.
 */
export const PLAIN_END = "plain end";

const pocket: Provenance = {
  source: "ashraePocket2013",
  locator: "p 319, Table 9-4, entry 1-1",
  basis: "read",
  checked: "2026-11-27",
};
const flush: Provenance = {
  ...pocket,
  locator: "flush with the wall: the flanged end of entry 1-1",
  basis: "from memory",
  checked: null,
};
const pocketMemory: Provenance = { ...pocket, basis: "from memory", checked: null };
const exam: Provenance = {
  source: "certificationExam",
  locator: "table of hood entry losses",
  basis: "read",
  checked: "2026-11-27",
};
const witheridge: Provenance = { source: "witheridge1963", locator: "Fig 19", basis: "read", checked: "2026-11-27" };
const acgih: Provenance = {
  source: "acgihMemory",
  locator: "Fig 5-12 and 5-13, hood entry losses",
  basis: "from memory",
  checked: null,
};

const projection: ShapeAxis = { name: "projection L/D", quantity: "ratio", usual: null };

/** Ends of a pipe without a hood, and the simplest openings. */
export const ductEnds: readonly LossFamily[] = [
  singleEntry({
    key: "plain end",
    aliases: ["plain duct end", "open pipe", "duct end", "plain"],
    label: "Plain duct end",
    note: "The end taken where no hood is named. Disagrees with plain end older (0.9) and thin free end (1.0).",
    k: 0.93,
    from: exam,
  }),
  singleEntry({
    key: "plain end older",
    aliases: [],
    label: "Plain duct end, older figure",
    note: "A textbook of the 1960s; hood suction 1.9 velocity pressures. Disagrees with plain end (0.93).",
    k: 0.9,
    from: witheridge,
  }),
  singleEntry({
    key: "thin free end",
    aliases: ["free end", "thin end"],
    label: "Thin-walled duct end that stands free",
    note: "Also the limit of duct end in wall from a projection of half a diameter on.",
    k: 1,
    from: { ...pocket, locator: "p 319, Table 9-4, entry 1-1, t/D 0, L/D 0.5 and 1" },
  }),
  singleEntry({
    key: "re-entrant end",
    aliases: ["re-entrant inlet", "reentrant inlet"],
    label: "Duct end that reaches into a box or room",
    note: "A second-hand manual's single figure; duct end in wall goes by the projection.",
    k: 0.85,
    from: { source: "ventilationManual", locator: "table 6", basis: "second-hand", checked: "2026-11-27" },
  }),
  singleEntry({
    key: "flanged end",
    aliases: ["flanged duct end", "flange", "flush end"],
    label: "Duct end with a flange, or flush with a wall",
    note: "Two sources print 0.5; an exhaust manual has 0.49 (flanged end manual).",
    k: 0.5,
    from: witheridge,
  }),
  singleEntry({
    key: "flanged end manual",
    aliases: [],
    label: "Duct end with a flange, exhaust manual",
    note: "Disagrees with flanged end (0.5) by 0.01.",
    k: 0.49,
    from: acgih,
  }),
  singleEntry({
    key: "orifice",
    aliases: ["sharp orifice", "sharp-edged orifice"],
    label: "Sharp-edged orifice into a duct",
    note: "Coefficient of entry 0.60.",
    k: 1.78,
    from: acgih,
  }),
  {
    key: "duct end in wall",
    aliases: ["duct end in wall thin"],
    kind: "hood",
    label: "Thin-walled duct end that comes through a wall (wall of the duct t/D 0)",
    note: "Projection = length in front of the wall / diameter. Thicker duct walls lose less: the two families below it. The value at 0.05 is from memory.",
    shape: projection,
    angle: null,
    rule: "table",
    points: [
      ...byShape(pocket, [
        [0, 0.5],
        [0.002, 0.57],
        [0.01, 0.68],
      ]),
      ...byShape(pocketMemory, [[0.05, 0.8]]),
      ...byShape(pocket, [
        [0.2, 0.92],
        [0.5, 1],
        [1, 1],
      ]),
    ],
  },
  {
    key: "duct end in wall medium",
    aliases: [],
    kind: "hood",
    label: "Duct end that comes through a wall (wall of the duct t/D 0.02)",
    note: "Projection = length in front of the wall / diameter. The values at 0 and 0.2 are from memory.",
    shape: projection,
    angle: null,
    rule: "table",
    points: [
      ...byShape(flush, [[0, 0.5]]),
      ...byShape(pocket, [
        [0.002, 0.51],
        [0.01, 0.52],
        [0.05, 0.55],
      ]),
      ...byShape(pocketMemory, [[0.2, 0.66]]),
      ...byShape(pocket, [
        [0.5, 0.72],
        [1, 0.72],
      ]),
    ],
  },
  {
    key: "duct end in wall thick",
    aliases: [],
    kind: "hood",
    label: "Thick-walled duct end that comes through a wall (wall of the duct t/D 0.05)",
    note: "Projection = length in front of the wall / diameter; at this wall thickness it no longer matters.",
    shape: projection,
    angle: null,
    rule: "table",
    points: byShape(pocket, [
      [0, 0.5],
      [0.01, 0.5],
      [0.05, 0.5],
      [0.2, 0.5],
      [1, 0.5],
    ]),
  },
];
