import { alone, byAngle, byShape } from "../points";
import type { LossFamily, Provenance } from "../schema";

const manual: Provenance = {
  source: "ventilationManual",
  locator: "table 6",
  basis: "second-hand",
  checked: "2026-11-27",
};
const memory: Provenance = {
  source: "ashraeDuctMemory",
  locator: "gradual expansion",
  basis: "from memory",
  checked: null,
};
const bordaCarnot: Provenance = {
  source: "commonPractice",
  locator: "(1 - ratio)^2, the formula that the printed values follow",
  basis: "common practice",
  checked: null,
};

/** Where the duct becomes larger in the direction of the air. */
export const expansions: readonly LossFamily[] = [
  {
    key: "expansion",
    aliases: ["increaser", "expansion tapered", "diffuser"],
    kind: "fitting",
    label: "Expansion, tapered",
    // The drawing that defines the angle could not be read. Taking it for the included angle gives the larger loss.
    // Usual 20: for the steps of a shop (ratio 0.4 and over) it already costs as much as an abrupt expansion.
    note: "Ratio = small area / large area, on the smaller duct's velocity pressure. The angle is taken as the included one, which the source leaves open. Never more than (1 - ratio)^2, what an abrupt expansion loses.",
    shape: { name: "area ratio, small / large", quantity: "ratio", usual: null },
    angle: { name: "included angle", usual: 20 },
    rule: "expansion",
    points: [
      ...byAngle(memory, [[5, 0.17]]),
      ...byAngle(manual, [
        [10, 0.28],
        [20, 0.45],
        [40, 0.73],
      ]),
    ],
  },
  {
    key: "expansion abrupt",
    aliases: ["abrupt expansion", "expansion sudden"],
    kind: "fitting",
    label: "Expansion, abrupt",
    note: "Ratio = small area / large area, on the smaller duct's velocity pressure. The printed values are (1 - ratio)^2; those at 0, 0.6 and 1 are that formula's.",
    shape: { name: "area ratio, small / large", quantity: "ratio", usual: null },
    angle: null,
    rule: "table",
    points: [
      ...byShape(bordaCarnot, [[0, 1]]),
      ...byShape(manual, [
        [0.2, 0.64],
        [0.4, 0.36],
      ]),
      ...byShape(bordaCarnot, [[0.6, 0.16]]),
      ...byShape(manual, [[0.8, 0.04]]),
      ...byShape(bordaCarnot, [[1, 0]]),
    ],
  },
  {
    key: "expansion slight",
    aliases: ["slight expansion"],
    kind: "fitting",
    label: "Expansion, slight and gradual",
    note: "As one project sheet used it, ratio and angle not given: 0.30 Pa at 3.14 m/s.",
    shape: null,
    angle: null,
    rule: "table",
    points: [alone({ source: "projectSheet", locator: "expansion row", basis: "read", checked: "2026-11-27" }, 0.05)],
  },
];
