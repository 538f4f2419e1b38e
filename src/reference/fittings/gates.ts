import { alone, byShape } from "../points";
import type { LossFamily, Provenance, ShapeAxis } from "../schema";

const idelchik: Provenance = {
  source: "idelchikGates",
  locator: "diagram 9-6, with a recess, gate in the system",
  basis: "second-hand",
  checked: "2026-11-28",
};
const withoutRecess: Provenance = { ...idelchik, locator: "diagram 9-5, without a recess, circular section, curve 1" };
const handbook: Provenance = {
  source: "braterKing1976",
  locator: "slide gate in a round conduit",
  basis: "second-hand",
  checked: "2026-11-27",
};

const opening: ShapeAxis = { name: "opening h/D", quantity: "ratio", usual: null };

/** Slide gates in the path of the air. */
export const gates: readonly LossFamily[] = [
  {
    key: "gate",
    aliases: ["slide gate", "blast gate", "gate open", "blast gate open"],
    kind: "fitting",
    label: "Slide gate, fully open",
    note: "The last value of gate part open. A body whose passage is rougher or narrower than the pipe costs more; the trade reckons with 0 to 0.2.",
    shape: null,
    angle: null,
    rule: "table",
    points: [alone(idelchik, 0.05)],
  },
  {
    key: "gate part open",
    aliases: ["slide gate part open", "blast gate part open", "gate throttled"],
    kind: "fitting",
    label: "Slide gate, partly open, its blade in a groove",
    note: "Opening = height of the opening / diameter. A straight pipe follows the gate. gate part open without recess is another table of the same book; gate part open in water disagrees above one half.",
    shape: opening,
    angle: null,
    rule: "table",
    points: byShape(idelchik, [
      [0.1, 200],
      [0.15, 77],
      [0.2, 33],
      [0.3, 11],
      [0.4, 4.7],
      [0.5, 2.35],
      [0.6, 1.23],
      [0.7, 0.67],
      [0.8, 0.31],
      [0.9, 0.11],
      [1, 0.05],
    ]),
  },
  {
    key: "gate part open without recess",
    aliases: ["slide gate without recess"],
    kind: "fitting",
    label: "Slide gate, partly open, no groove for its blade",
    note: "Opening = height of the opening / diameter. Measured in a pipe of 25 mm. Loses less than gate part open from 0.3 on.",
    shape: opening,
    angle: null,
    rule: "table",
    points: byShape(withoutRecess, [
      [0.2, 35],
      [0.3, 10],
      [0.4, 4.6],
      [0.5, 2.06],
      [0.6, 0.98],
      [0.7, 0.44],
      [0.8, 0.17],
      [0.9, 0.06],
    ]),
  },
  {
    key: "gate part open in water",
    aliases: [],
    kind: "fitting",
    label: "Slide gate, partly open, measured in water",
    note: "Opening = height of the opening / diameter. Of a culvert's gate; at 1 it is likely to hold an entrance loss too, and it disagrees with the other two from one half on.",
    shape: opening,
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
