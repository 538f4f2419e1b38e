import { cfm } from "../asPrinted";
import type { MachineRow, Provenance } from "../schema";

const osha = (table: string): Provenance => ({
  source: "osha1910_94",
  locator: `1910.94(b)(3), Table ${table}`,
  basis: "read",
  checked: "2026-11-27",
});
const california: Provenance = {
  source: "caTitle8",
  locator: "section 5152, Table V-5",
  basis: "read",
  checked: "2026-11-27",
};

const row = (from: Provenance, key: string, label: string, flow: number, note?: string): MachineRow => ({
  key,
  label,
  airflow: cfm(flow),
  airflowHigh: null,
  port: null,
  ...(note === undefined ? {} : { note }),
  ...from,
});

const SPARKS = "Never on a duct that carries wood dust: sparks light it.";
const WIDER = `A wider wheel takes more in proportion to its width. ${SPARKS}`;
const METAL = `For metalwork; the nearest rule there is to a disc sander. ${SPARKS}`;

/** Minimum airflow at wheels, discs and belts, US rules: not for wood, but the nearest rules to sanders. */
export const grindingWheels: readonly MachineRow[] = [
  row(osha("G-4"), "abrasive wheel 16 to 19 in", "Abrasive wheel, 16 to 19 in, 3 in wide", 500, WIDER),
  row(osha("G-4"), "abrasive wheel 19 to 24 in", "Abrasive wheel, 19 to 24 in, 4 in wide", 610, WIDER),
  row(osha("G-4"), "abrasive wheel 24 to 30 in", "Abrasive wheel, 24 to 30 in, 5 in wide", 880, WIDER),
  row(osha("G-4"), "abrasive wheel 30 to 36 in", "Abrasive wheel, 30 to 36 in, 6 in wide", 1200, WIDER),
  row(osha("G-4"), "abrasive wheel 9 to 16 in", "Abrasive wheel, 9 to 16 in, 2 in wide", 390, WIDER),
  row(osha("G-4"), "abrasive wheel to 9 in", "Abrasive wheel, to 9 in, 1.5 in wide", 220, WIDER),
  row(california, "belt 3 to 5 in", "Grinding or polishing belt, 3 to 5 in wide", 300, SPARKS),
  row(california, "belt 5 to 7 in", "Grinding or polishing belt, 5 to 7 in wide", 390, SPARKS),
  row(california, "belt 7 to 9 in", "Grinding or polishing belt, 7 to 9 in wide", 500, SPARKS),
  row(california, "belt to 3 in", "Grinding or polishing belt, to 3 in wide", 220, SPARKS),
  row(
    osha("G-5"),
    "buffing wheel 16 to 19 in",
    "Buffing, polishing or scratch-brush wheel, 16 to 19 in, 4 in wide",
    610,
    SPARKS,
  ),
  row(
    osha("G-5"),
    "buffing wheel 19 to 24 in",
    "Buffing, polishing or scratch-brush wheel, 19 to 24 in, 5 in wide",
    740,
    SPARKS,
  ),
  row(
    osha("G-5"),
    "buffing wheel 24 to 30 in",
    "Buffing, polishing or scratch-brush wheel, 24 to 30 in, 6 in wide",
    1040,
    SPARKS,
  ),
  row(
    osha("G-5"),
    "buffing wheel 30 to 36 in",
    "Buffing, polishing or scratch-brush wheel, 30 to 36 in, 6 in wide",
    1200,
    SPARKS,
  ),
  row(
    osha("G-5"),
    "buffing wheel 9 to 16 in",
    "Buffing, polishing or scratch-brush wheel, 9 to 16 in, 3 in wide",
    500,
    SPARKS,
  ),
  row(
    osha("G-5"),
    "buffing wheel to 9 in",
    "Buffing, polishing or scratch-brush wheel, to 9 in, 2 in wide",
    300,
    SPARKS,
  ),
  row(osha("G-6"), "disc grinder 12 to 19 in", "Single-spindle disc grinder, 12 to 19 in", 390, METAL),
  row(osha("G-6"), "disc grinder 19 to 30 in", "Single-spindle disc grinder, 19 to 30 in", 610, METAL),
  row(osha("G-6"), "disc grinder 30 to 36 in", "Single-spindle disc grinder, 30 to 36 in", 880, METAL),
  row(osha("G-6"), "disc grinder to 12 in", "Single-spindle disc grinder, to 12 in", 220, METAL),
  row(
    { source: "uwSander", locator: "abstract", basis: "read", checked: "2026-11-27" },
    "hand orbital sander",
    "Hand orbital sander, shroud with an industrial vacuum",
    50,
    "Least airflow; units driven by the sander's own impeller or exhaust do not hold it.",
  ),
];
