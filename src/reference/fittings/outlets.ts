import { alone, byShape } from "../points";
import type { LossFamily, Provenance } from "../schema";

const acgih: Provenance = {
  source: "acgihMemory",
  locator: "weather cap, loss by height",
  basis: "from memory",
  checked: null,
};

/** On the last run after the fan it is counted with the velocity pressure of the fan's own outlet. */
export const EXIT = "exit";

/** Where the air leaves the system. */
export const outlets: readonly LossFamily[] = [
  {
    key: EXIT,
    aliases: ["outlet", "discharge", "duct exit"],
    kind: "fitting",
    label: "Exit into the open or into a large box",
    note: "Whatever the shape of the end, one velocity pressure is lost. In a runs table, the end of the last run after the fan is counted by itself, less what the fan's static pressure leaves out: named there, an exit as wide as the fan's outlet costs nothing more.",
    shape: null,
    angle: null,
    rule: "table",
    points: [
      alone({ source: "ventilationManual", locator: "table 6", basis: "second-hand", checked: "2026-11-27" }, 1),
    ],
  },
  {
    key: "weather cap",
    aliases: ["rain cap", "stack cap"],
    kind: "fitting",
    label: "Weather cap over a stack",
    note: "Height = clear height under the cap / duct diameter. From memory; it does not say whether the exit's own velocity pressure is counted in.",
    shape: { name: "height h/D", quantity: "ratio", usual: null },
    angle: null,
    rule: "table",
    points: byShape(acgih, [
      [0.45, 1],
      [0.5, 0.73],
      [0.55, 0.56],
      [0.6, 0.41],
      [0.65, 0.3],
      [0.7, 0.22],
      [0.75, 0.18],
      [1, 0.1],
    ]),
  },
];
