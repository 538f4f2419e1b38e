import { cubicMetresPerHour, millimetres } from "../asPrinted";
import type { MachineRow, Provenance } from "../schema";

const rule: Provenance = { source: "trgs553", locator: "Annex 2 (2022)", basis: "read", checked: "2026-11-27" };
const ruleOf2008: Provenance = {
  source: "trgs553of2008",
  locator: "Annex 2 (2008)",
  basis: "read",
  checked: "2026-11-27",
};

/** One row as printed: airflow in m³/h, port in mm; each port carries 20 m/s. */
const row = (from: Provenance, key: string, label: string, flow: number, port: number, note?: string): MachineRow => ({
  key,
  label,
  airflow: cubicMetresPerHour(flow),
  airflowHigh: null,
  port: millimetres(port),
  ...(note === undefined ? {} : { note }),
  ...from,
});

/** Minimum airflow and port of woodworking machines, German technical rule for wood dust. */
export const woodworkingRule: readonly MachineRow[] = [
  row(rule, "pendulum saw", "Pendulum (trim) saw, duct under the slot and catcher", 820, 120),
  row(ruleOf2008, "pendulum saw 2008", "Pendulum saw (2008 edition)", 820, 120),
  row(
    rule,
    "planer large",
    "Surface or thickness planer, 520 mm and wider",
    1450,
    160,
    'Printed "< 520 mm" a second time, a slip: it must mean 520 mm and over.',
  ),
  row(ruleOf2008, "planer over 63 cm 2008", "Surface or thickness planer, wider than 63 cm (2008 edition)", 1450, 160),
  row(rule, "planer under 410 mm", "Surface or thickness planer, narrower than 410 mm", 820, 120),
  row(rule, "planer under 520 mm", "Surface or thickness planer, narrower than 520 mm", 1110, 140),
  row(
    ruleOf2008,
    "planer under 63 cm 2008",
    "Surface or thickness planer, narrower than 63 cm (2008 edition)",
    1110,
    140,
  ),
  row(
    rule,
    "spindle moulder",
    "Spindle moulder (shaper), 120 mm above and 100 mm below",
    1450,
    160,
    "Old or untested machines; makers may ask for more.",
  ),
  row(ruleOf2008, "spindle moulder 2008", "Spindle moulder, 120 mm above and 100 mm below (2008 edition)", 1450, 160),
  row(rule, "spindle moulder small", "Spindle moulder (shaper) under 2.5 kW, 120 mm above only", 820, 120),
  row(ruleOf2008, "table saw 80 and 100 mm 2008", "Table saw, 80 mm above and 100 mm below (2008 edition)", 820, 120),
  row(ruleOf2008, "table saw 80 and 120 mm 2008", "Table saw, 80 mm above and 120 mm below (2008 edition)", 1110, 140),
  row(ruleOf2008, "table saw 80 and 140 mm 2008", "Table saw, 80 mm above and 140 mm below (2008 edition)", 1450, 160),
  row(ruleOf2008, "table saw 80 and 80 mm 2008", "Table saw, 80 mm above and 80 mm below (2008 edition)", 820, 120),
  row(rule, "table saw large", "Table or sliding saw, blade over 315 mm: 80 mm hood and 120 mm below", 1110, 140),
  row(rule, "table saw medium", "Table or sliding saw, blade to 315 mm: 40 mm hood and 100 mm below", 820, 120),
  row(
    rule,
    "table saw small",
    "Table saw, blade to 250 mm and to 2.5 kW: 40 mm hood and 100 mm below",
    560,
    120,
    "560 m³/h is 20 m/s in 100 mm, not in the printed total port of 120 mm.",
  ),
];
