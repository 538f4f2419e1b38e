import { cfm } from "../asPrinted";
import type { MachineRow, Provenance } from "../schema";

/** A table that such manuals print alike; not a rule, and the lower end of what other sources ask for. */
const manual: Provenance = {
  source: "collectorManual",
  locator: "table of airflow and duct diameter per machine",
  basis: "second-hand",
  checked: "2026-11-28",
};
const practice: Provenance = {
  source: "commonPractice",
  locator: "airflow per machine, estimate",
  basis: "common practice",
  checked: null,
};

const row = (from: Provenance, key: string, label: string, low: number, high?: number, note?: string): MachineRow => ({
  key,
  label,
  airflow: cfm(low),
  airflowHigh: high === undefined ? null : cfm(high),
  port: null,
  ...(note === undefined ? {} : { note }),
  ...from,
});

const CHIPS = "Moves the chips; fine dust at an open hood asks for more.";

/** Machines of a small shop that the rules leave out. */
export const woodworkingPractice: readonly MachineRow[] = [
  row(manual, "band saw 12 to 16 in", "Band saw, wheels of 12 to 16 in", 350),
  row(manual, "belt or disc sander small", "Belt and disc sander of a small shop", 450),
  row(
    practice,
    "cnc router",
    "CNC router, shoe with brushes",
    400,
    800,
    "By the shoe: open brushes ask for the upper end.",
  ),
  row(manual, "drill press", "Drill press", 350, 400),
  row(manual, "drum sander 12 to 24 in", "Drum sander, 12 to 24 in wide", 550, 700),
  row(
    practice,
    "drum sander wide",
    "Drum or belt sander, wider than 24 in",
    900,
    1400,
    "Two or more ports; each asks for its share.",
  ),
  row(practice, "edge sander", "Edge belt sander", 400, 800),
  row(manual, "mitre saw", "Mitre saw or radial arm saw", 450, 600, CHIPS),
  row(practice, "mortiser", "Mortiser, hollow chisel", 200, 350, "Chips fall; a hood beside the chisel catches them."),
  row(
    manual,
    "planer 10 to 15 in",
    "Thickness planer, 10 to 15 in",
    400,
    undefined,
    "The German rule asks for 483 cfm up to 410 mm: see planer under 410 mm.",
  ),
  row(
    practice,
    "planer 12 to 16 in",
    "Thickness planer, 12 to 16 in",
    400,
    650,
    "From a manual's 400 to what a rule asks for up to 520 mm (653).",
  ),
  row(manual, "planer 16 to 20 in", "Thickness planer, 16 to 20 in", 600, 800),
  row(
    manual,
    "router table",
    "Router table",
    200,
    undefined,
    "Of the port under the table or the fence alone; for both, take twice as much.",
  ),
  row(manual, "scroll saw", "Scroll saw", 200),
  row(manual, "spindle sander", "Spindle sander", 400),
  row(manual, "table saw 10 in", "Table saw, blade of 10 in", 350),
];
