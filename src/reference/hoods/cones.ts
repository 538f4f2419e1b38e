import { byTable } from "../points";
import type { AngleAxis, LossFamily, Provenance, ShapeAxis } from "../schema";

const pocket = (entry: string): Provenance => ({
  source: "ashraePocket2013",
  locator: `p 319, Table 9-4, entry ${entry}`,
  basis: "read",
  checked: "2026-11-27",
});
/** The ends of a row that could not be read: at 0 degrees a cone is the bare end, at 180 a flange, whatever its length. */
const rowEnd = (entry: string): Provenance => ({
  ...pocket(entry),
  basis: "from memory",
  checked: null,
});

const length: ShapeAxis = { name: "length L/D", quantity: "ratio", usual: null };
// Usual 90: a wide cone loses more than the best ones (45 to 60), so a length alone is not flattered.
const included: AngleAxis = { name: "included angle", usual: 90 };

const angles = [0, 10, 20, 30, 45, 60, 90, 120, 150, 180];

/** Conical hoods by length and angle. */
export const cones: readonly LossFamily[] = [
  {
    key: "cone",
    aliases: ["conical hood", "cone free"],
    kind: "hood",
    label: "Conical hood that stands free, round or rectangular",
    note: "By length of the cone / duct diameter and included angle (90 degrees if left out). Rectangular duct: D = 2HW/(H+W). Without a screen. Replaces the tapered hoods.",
    shape: length,
    angle: included,
    rule: "table",
    points: [
      ...byTable(pocket("1-4"), angles, [
        [0.025, [1, 0.96, null, 0.9, 0.85, 0.8, null, 0.64, 0.57, 0.5]],
        [0.05, [null, 0.93, 0.86, 0.8, null, 0.67, 0.6, 0.56, null, 0.5]],
        [0.1, [1, 0.8, null, 0.55, 0.46, 0.41, null, 0.43, 0.46, 0.5]],
        [0.25, [null, 0.68, 0.45, 0.3, null, 0.17, 0.21, 0.28, null, 0.5]],
        [0.6, [1, 0.46, null, 0.18, 0.14, 0.13, null, 0.27, 0.37, 0.5]],
        [1, [null, 0.32, 0.2, 0.14, null, 0.1, 0.16, 0.24, null, 0.5]],
      ]),
      ...byTable(
        rowEnd("1-4"),
        [0],
        [
          [0.05, [1]],
          [0.25, [1]],
          [1, [1]],
        ],
      ),
    ],
  },
  {
    key: "cone flanged",
    aliases: ["cone with end wall", "conical hood flanged", "conical hood with end wall"],
    kind: "hood",
    label: "Conical hood with an end wall or flange, round or rectangular",
    note: "By length of the cone / duct diameter and included angle (90 degrees if left out). From a scan of two columns, re-read by order; row 0.15 breaks off, its end at 180 degrees is from memory.",
    shape: length,
    angle: included,
    rule: "table",
    points: [
      ...byTable(pocket("1-5"), angles, [
        [0.025, [0.5, 0.47, null, 0.43, 0.41, 0.4, null, 0.44, 0.46, 0.5]],
        [0.05, [null, 0.45, 0.41, 0.36, null, 0.3, 0.34, 0.39, null, 0.5]],
        [0.075, [0.5, 0.42, null, 0.3, 0.25, 0.23, null, 0.35, 0.43, 0.5]],
        [0.1, [null, 0.39, 0.32, 0.25, null, 0.18, 0.25, 0.33, null, 0.5]],
        [0.15, [0.5, 0.37, null, 0.2, 0.16, 0.15, null, null, null, null]],
      ]),
      ...byTable(
        rowEnd("1-5"),
        [0, 180],
        [
          [0.05, [0.5, null]],
          [0.1, [0.5, null]],
          [0.15, [null, 0.5]],
        ],
      ),
    ],
  },
];
