import { cfm } from "../asPrinted";
import type { MachineRow } from "../schema";

const VERIFY = "From older woodworking tables, not seen again: verify against a current edition.";

/** A row in cfm; the upper figure where a range is remembered. */
const row = (key: string, label: string, low: number, high?: number): MachineRow => ({
  key,
  label,
  airflow: cfm(low),
  airflowHigh: high === undefined ? null : cfm(high),
  port: null,
  note: VERIFY,
  source: "acgihMemory",
  locator: "chapter 10, woodworking plates",
  basis: "from memory",
  checked: null,
});

/** Airflow at woodworking machines in the US exhaust trade, from memory: weaker than the German rule. */
export const woodworkingFromMemory: readonly MachineRow[] = [
  row("band saw to 2 in blade", "Band saw, blade to 2 in (two pick-ups of 350)", 700),
  row("circular saw 16 to 24 in", "Circular saw, 16 to 24 in", 440),
  row("circular saw over 24 in", "Circular saw over 24 in, or dado head", 550),
  row("circular saw to 16 in", "Circular saw, to 16 in", 350),
  row("disc sander 12 to 18 in", "Disc sander, 12 to 18 in", 440),
  row("disc sander 18 to 26 in", "Disc sander, 18 to 26 in", 550),
  row("disc sander to 12 in", "Disc sander, to 12 in", 350),
  row("drum sander 200 to 400 in2", "Drum sander, 200 to 400 in² of drum", 550),
  row("drum sander 400 to 700 in2", "Drum sander, 400 to 700 in² of drum", 785),
  row("drum sander to 200 in2", "Drum sander, under 200 in² of drum", 350),
  row("floor sweep", "Floor sweep, 6 to 8 in", 800, 1400),
  row("jointer 12 to 20 in", "Jointer, 12 to 20 in", 550),
  row("jointer 6 to 12 in", "Jointer, 6 to 12 in", 440),
  row("jointer over 20 in", "Jointer, over 20 in", 785),
  row("jointer to 6 in", "Jointer, to 6 in", 350),
  row("lathe", "Lathe, by size", 350, 1400),
  row("planer 20 to 26 in", "Single planer, 20 to 26 in", 1100),
  row("planer 26 to 32 in", "Single planer, 26 to 32 in", 1400),
  row("planer 32 to 38 in", "Single planer, 32 to 38 in", 1765),
  row("planer to 20 in", "Single planer, to 20 in", 785),
  row("shaper", "Shaper or router, by size", 350, 1400),
];
