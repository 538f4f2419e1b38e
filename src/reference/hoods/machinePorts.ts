import type { LossFamily, Provenance } from "../schema";
import { singleEntry } from "./singleEntry";

/** A machine manual, by its kind and year; what it prints at 20 m/s is p, and K = p / p_v - 1 with p_v = 240.3 Pa. */
const manual = (source: "planerManual" | "tableSawManual" | "shaperManual", locator: string): Provenance => ({
  source,
  locator,
  basis: "second-hand",
  checked: "2026-11-28",
});
const estimate: Provenance = {
  source: "commonPractice",
  locator: "middle of the range in the columns low and high",
  basis: "common practice",
  checked: null,
};

interface Port {
  readonly key: string;
  readonly aliases: readonly string[];
  readonly label: string;
  readonly note: string;
  readonly k: number;
  readonly range: readonly [low: number, high: number];
  readonly from?: Provenance;
}

const MEASURE =
  "An estimate; machines differ much. Measure yours, or take its manual's figure: Port suction and Port airflow.";

const ports: readonly Port[] = [
  {
    key: "band saw port",
    aliases: ["band saw", "bandsaw"],
    label: "Band saw: box around the lower wheel and under the table",
    note: MEASURE,
    k: 2.5,
    range: [1, 4],
  },
  {
    key: "belt sander port",
    aliases: ["belt sander", "edge sander"],
    label: "Belt or edge sander: hood behind the roller",
    note: MEASURE,
    k: 1.25,
    range: [0.5, 2],
  },
  {
    key: "blade guard",
    aliases: ["blade guard port"],
    label: "Table saw: guard above the blade, small port",
    note: `Narrow inside, so the upper half of the range is likely. ${MEASURE}`,
    k: 2.5,
    range: [1, 4],
  },
  {
    key: "cnc shoe",
    aliases: ["dust shoe", "cnc router"],
    label: "CNC router: shoe with brushes",
    note: `Brushes that touch the work let little air in. ${MEASURE}`,
    k: 3,
    range: [1, 5],
  },
  {
    key: "disc sander port",
    aliases: ["disc sander"],
    label: "Disc sander: box around the lower half of the disc",
    note: `A grinder hood has 0.65 (29 CFR 1910.94). ${MEASURE}`,
    k: 1.5,
    range: [0.5, 2.5],
  },
  {
    key: "drill press hood",
    aliases: ["drill press"],
    label: "Drill press: nozzle or small hood beside the bit",
    note: MEASURE,
    k: 1.25,
    range: [0.5, 2],
  },
  {
    key: "drum sander port",
    aliases: ["drum sander"],
    label: "Drum sander: cover over the drum",
    note: MEASURE,
    k: 1.9,
    range: [0.8, 3],
  },
  {
    key: "floor sweep hood",
    aliases: ["floor sweep"],
    label: "Floor sweep: opening at the floor",
    note: MEASURE,
    k: 1,
    range: [0.5, 1.5],
  },
  {
    key: "jointer port",
    aliases: ["jointer", "surface planer port"],
    label: "Jointer (surface planer): chute under the cutter block",
    note: "A manual asks for 900 Pa at 20 m/s in 160 mm. The range runs from its other mode to the 1500 Pa that a rule of trade expects at most.",
    k: 2.75,
    range: [1.29, 5.24],
    from: manual("planerManual", "connecting the extraction unit: planer and jointer, 900 Pa at 20 m/s, 160 mm"),
  },
  {
    key: "lathe hood",
    aliases: ["lathe"],
    label: "Lathe: open hood behind the work",
    note: `A tapered hood of good shape has less; see cone. ${MEASURE}`,
    k: 0.9,
    range: [0.25, 1.5],
  },
  {
    key: "mitre saw hood",
    aliases: ["mitre saw", "miter saw"],
    label: "Mitre saw: open hood behind the saw",
    note: `The port on the saw itself is narrower and asks for more. ${MEASURE}`,
    k: 1.75,
    range: [0.5, 3],
  },
  {
    key: "planer port",
    aliases: ["planer", "thicknesser", "thicknesser port", "thickness planer"],
    label: "Planer (thicknesser): cover over the cutter block",
    note: "A manual asks for 550 Pa at 20 m/s in 160 mm. The range runs to its other mode; a hood of another maker may ask for more.",
    k: 1.29,
    range: [0.5, 2.75],
    from: manual("planerManual", "connecting the extraction unit: thicknesser, 550 Pa at 20 m/s, 160 mm"),
  },
  {
    key: "router table port",
    aliases: ["router table"],
    label: "Router table: fence and box under the table",
    note: MEASURE,
    k: 3,
    range: [1, 5],
  },
  {
    key: "scroll saw port",
    aliases: ["scroll saw"],
    label: "Scroll saw: small port under the table",
    note: MEASURE,
    k: 3,
    range: [1, 5],
  },
  {
    key: "shaper fence",
    aliases: ["shaper", "spindle moulder", "spindle moulder hood"],
    label: "Shaper (spindle moulder): hood of the fence",
    note: "A manual prints 360 Pa at 800 m³/h in 120 mm. That is K 0.55 if static suction is meant, 1.55 if entry loss; it does not say, so the middle is taken.",
    k: 1.05,
    range: [0.55, 1.55],
  },
  {
    key: "shaper body",
    aliases: ["shaper cabinet"],
    label: "Shaper (spindle moulder): port in the body, under the table",
    note: "A manual asks for 800 Pa at 600 m³/h in 120 mm (14.7 m/s).",
    k: 5.13,
    range: [5.13, 6.13],
    from: manual("shaperManual", "chip and dust suction: machine body, 800 Pa at 600 m³/h, 120 mm"),
  },
  {
    key: "spindle sander port",
    aliases: ["spindle sander"],
    label: "Spindle sander: ring around the spindle",
    note: MEASURE,
    k: 1.9,
    range: [0.8, 3],
  },
  {
    key: "table saw both ports",
    aliases: ["table saw", "panel saw"],
    label: "Table saw: guard and cabinet together, behind the piece that joins them",
    note: "A sliding saw's manual prints about 1200 Pa at 20 m/s in 140 mm. Another saw's prints 530 Pa; a saw that rips asks for 1100 Pa (K 3.6).",
    k: 3.99,
    range: [1.2, 5.24],
    from: manual("tableSawManual", "connecting the extraction unit: total connection 140 mm, about 1200 Pa at 20 m/s"),
  },
  {
    key: "table saw cabinet",
    aliases: ["table saw cabinet port"],
    label: "Table saw: port of the cabinet alone",
    note: "Two manuals print 530 and 1200 Pa for a whole saw, K 1.2 and 4; the middle is taken for a cabinet. Measure yours: Port suction and Port airflow.",
    k: 2.6,
    range: [1.2, 4],
  },
];

/** Ports and hoods of woodworking machines: what the inside of the machine costs the air, in the port's own duct. */
export const machinePorts: readonly LossFamily[] = ports.map(({ key, aliases, label, note, k, range, from }) => ({
  ...singleEntry({ key, aliases, label, note, k, from: from ?? estimate }),
  port: { low: range[0], high: range[1] },
}));
