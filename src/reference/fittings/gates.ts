import { alone, byShape } from "../points";
import type { LossFamily, Provenance } from "../schema";

const handbook: Provenance = {
  source: "braterKing1976",
  locator: "slide gate in a round conduit",
  basis: "second-hand",
  checked: "2026-11-27",
};

/** Slide gates in the path of the air. */
export const gates: readonly LossFamily[] = [
  {
    key: "gate",
    aliases: ["slide gate", "blast gate", "gate open", "blast gate open"],
    kind: "fitting",
    label: "Slide gate, fully open",
    note: "Upper, cautious end of the 0 to 0.2 that the trade uses; no table was found that settles it.",
    shape: null,
    angle: null,
    rule: "table",
    points: [alone({ source: "commonPractice", locator: "0 to 0.2", basis: "common practice", checked: null }, 0.2)],
  },
  {
    key: "gate part open",
    aliases: ["slide gate part open", "blast gate part open", "gate throttled"],
    kind: "fitting",
    label: "Slide gate, partly open",
    note: "Opening = height of the opening / diameter. Measured in water; the value at 1 is likely to hold an entrance loss too. At one half a US Army chart gives 2.1.",
    shape: { name: "opening h/D", quantity: "ratio", usual: null },
    angle: null,
    rule: "table",
    points: byShape(handbook, [
      [0.125, 30],
      [0.25, 10],
      [0.375, 4.5],
      [0.5, 2],
      [0.75, 1.5],
      [1, 0.9],
    ]),
  },
];
