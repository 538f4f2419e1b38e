import { byShape } from "../points";
import type { LossFamily, Provenance, ShapeAxis } from "../schema";

const ashrae: Provenance = {
  source: "ashrae1988sef",
  locator: "square elbow without vanes at a fan inlet",
  basis: "second-hand",
  checked: "2026-11-27",
};
const radius: ShapeAxis = { name: "r/H", quantity: "ratio", usual: null };

/** What a fan loses by an elbow close before it, over the elbow's own loss (system effect). */
export const fanInletElbows: readonly LossFamily[] = [
  {
    key: "fan inlet elbow direct",
    aliases: ["fan inlet elbow"],
    kind: "fitting",
    label: "System effect of an elbow of square section right at the fan inlet, no vanes",
    note: "Comes on top of the elbow's own loss.",
    shape: radius,
    angle: null,
    rule: "table",
    points: byShape(ashrae, [
      [0.5, 2.5],
      [0.75, 2],
      [1, 1.2],
      [2, 0.8],
    ]),
  },
  {
    key: "fan inlet elbow at two diameters",
    aliases: [],
    kind: "fitting",
    label: "System effect of an elbow of square section, 2 diameters of straight duct before the fan",
    note: "Comes on top of the elbow's own loss.",
    shape: radius,
    angle: null,
    rule: "table",
    points: byShape(ashrae, [
      [0.5, 1.6],
      [0.75, 1.2],
      [1, 0.66],
      [2, 0.47],
    ]),
  },
  {
    key: "fan inlet elbow at five diameters",
    aliases: [],
    kind: "fitting",
    label: "System effect of an elbow of square section, 5 diameters of straight duct before the fan",
    note: "Comes on top of the elbow's own loss.",
    shape: radius,
    angle: null,
    rule: "table",
    points: byShape(ashrae, [
      [0.5, 0.8],
      [0.75, 0.66],
      [1, 0.33],
      [2, 0.26],
    ]),
  },
];
