import { alone, byShape } from "../points";
import type { LossFamily, Provenance, ShapeAxis } from "../schema";

const idelchik: Provenance = {
  source: "ashrae1977",
  locator: "bell mouth in a wall, r/D 0 to 0.2",
  basis: "second-hand",
  checked: "2026-11-27",
};
const pocket: Provenance = {
  source: "ashraePocket2013",
  locator: "p 319, Table 9-4, entry 1-2",
  basis: "read",
  checked: "2026-11-27",
};

// Usual 0.1: half of what makes a full bell mouth, so that a name without a number is not flattered.
const radius: ShapeAxis = { name: "r/D", quantity: "ratio", usual: 0.1 };

/** Rounded entries. */
export const bellMouths: readonly LossFamily[] = [
  {
    key: "bell mouth",
    aliases: ["bellmouth", "rounded entry", "bell mouth in wall"],
    kind: "hood",
    label: "Bell mouth in a wall or with a flange",
    note: "By the radius of the rounding / diameter; without it r/D 0.1 is taken, the cautious half of a full bell mouth.",
    shape: radius,
    angle: null,
    rule: "table",
    points: [
      ...byShape(idelchik, [
        [0, 0.5],
        [0.01, 0.44],
        [0.02, 0.37],
        [0.03, 0.31],
        [0.04, 0.26],
        [0.05, 0.22],
        [0.06, 0.2],
        [0.08, 0.15],
        [0.1, 0.12],
        [0.12, 0.09],
        [0.16, 0.06],
        [0.2, 0.03],
      ]),
      ...byShape(
        {
          source: "ashrae2021",
          locator: "ch 21, fitting ER2-1, sample row",
          basis: "second-hand",
          checked: "2026-11-27",
        },
        [[0.21, 0.03]],
      ),
    ],
  },
  {
    key: "bell mouth free",
    aliases: ["bellmouth free", "bell mouth without wall"],
    kind: "hood",
    label: "Bell mouth that stands free, no wall or flange",
    note: "By the radius of the rounding / diameter; without it r/D 0.1 is taken.",
    shape: radius,
    angle: null,
    rule: "table",
    points: byShape(pocket, [
      [0, 1],
      [0.01, 0.87],
      [0.03, 0.61],
      [0.04, 0.51],
      [0.05, 0.4],
      [0.08, 0.2],
      [0.1, 0.15],
      [0.12, 0.1],
      [0.2, 0.03],
    ]),
  },
  {
    key: "bell mouth single figure",
    aliases: [],
    kind: "hood",
    label: "Bell mouth, the exhaust trade's single figure",
    note: "For a full bell mouth; an exhaust manual from memory has the same 0.04. bell mouth goes by the radius.",
    shape: null,
    angle: null,
    rule: "table",
    points: [
      alone(
        { source: "certificationExam", locator: "table of hood entry losses", basis: "read", checked: "2026-11-27" },
        0.04,
      ),
    ],
  },
  {
    key: "bell mouth manual",
    aliases: [],
    kind: "hood",
    label: "Bell mouth, another manual's single figure",
    note: "For a full bell mouth. Disagrees with bell mouth single figure by 0.01.",
    shape: null,
    angle: null,
    rule: "table",
    points: [
      alone({ source: "ventilationManual", locator: "table 6", basis: "second-hand", checked: "2026-11-27" }, 0.03),
    ],
  },
];
