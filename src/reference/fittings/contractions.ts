import { byAngle, byShape, byTable } from "../points";
import type { LossFamily, Provenance } from "../schema";

const smacna: Provenance = {
  source: "smacna1990",
  locator: "Table 14-12 A, p 14.27 (scan; first angle read as 10)",
  basis: "read",
  checked: "2026-11-27",
};
const manual: Provenance = {
  source: "ventilationManual",
  locator: "table 6",
  basis: "second-hand",
  checked: "2026-11-27",
};
const manualMemory: Provenance = {
  ...manual,
  source: "ashraeDuctMemory",
  locator: "abrupt contraction",
  basis: "from memory",
  checked: null,
};
const nothing: Provenance = {
  source: "commonPractice",
  locator: "no change of area, no loss",
  basis: "common practice",
  checked: null,
};

const angles = [10, 15, 40, 50, 60, 90, 120, 150, 180];

/** Where the duct becomes smaller in the direction of the air. */
export const contractions: readonly LossFamily[] = [
  {
    key: "contraction",
    aliases: ["reducer", "contraction tapered"],
    kind: "fitting",
    label: "Contraction, tapered",
    // Usual 90: steeper than a bought reducer (30 to 60), so cautious, without counting it as an abrupt step (180).
    note: "Ratio = entering area / leaving area (5 to 4 in is 1.56), on the smaller duct's velocity pressure. Without an angle 90 degrees is taken, which loses more than a slender one. Ratio 1 is no loss by definition.",
    shape: { name: "area ratio, entering / leaving", quantity: "ratio", usual: null },
    angle: { name: "included angle", usual: 90 },
    rule: "table",
    points: [
      ...byTable(nothing, angles, [[1, angles.map(() => 0)]]),
      // Printed columns 15-40 and 50-60 stand here at both their ends.
      ...byTable(smacna, angles, [
        [2, [0.05, 0.05, 0.05, 0.06, 0.06, 0.12, 0.18, 0.24, 0.26]],
        [4, [0.05, 0.04, 0.04, 0.07, 0.07, 0.17, 0.27, 0.35, 0.41]],
        [6, [0.05, 0.04, 0.04, 0.07, 0.07, 0.18, 0.28, 0.36, 0.42]],
        [10, [0.05, 0.05, 0.05, 0.08, 0.08, 0.19, 0.29, 0.37, 0.43]],
      ]),
    ],
  },
  {
    key: "contraction manual",
    aliases: ["reducer manual"],
    kind: "fitting",
    label: "Contraction, tapered, another manual",
    note: "By angle alone, on the smaller duct's velocity pressure; agrees with contraction to about 0.03.",
    shape: null,
    angle: { name: "angle as drawn", usual: 60 },
    rule: "table",
    points: byAngle(manual, [
      [30, 0.02],
      [60, 0.07],
    ]),
  },
  {
    key: "contraction abrupt",
    aliases: ["abrupt contraction", "reducer abrupt", "contraction sudden"],
    kind: "fitting",
    label: "Contraction, abrupt",
    note: "Ratio = small area / large area, on the smaller duct's velocity pressure. The values at 0.25 and 1 are from memory.",
    shape: { name: "area ratio, small / large", quantity: "ratio", usual: null },
    angle: null,
    rule: "table",
    points: [
      ...byShape(manual, [[0, 0.5]]),
      ...byShape(manualMemory, [[0.25, 0.45]]),
      ...byShape(manual, [
        [0.5, 0.32],
        [0.75, 0.18],
      ]),
      ...byShape(nothing, [[1, 0]]),
    ],
  },
];
