import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { FLOW_SYSTEM_CELL } from "../layout";
import { LOOK } from "../parts/look";
import { printing } from "../parts/printing";
import { formatOf, rounded, unitOnly, unitWord } from "../parts/units";
import { ALTITUDE_CELL, TEMPERATURE_CELL } from "../start/startLayout";
import type { SummaryContents } from "./summaryContents";
import { summaryHoods } from "./summaryHoods";
import {
  ASSUMED,
  CAUTIONS,
  HOOD_FLAGS,
  HOODS_HEADER,
  MAKER,
  MORE_CELL,
  MOST_SETS_SHOWN,
  SETS_HEADER,
  WORKSHOP_CELL,
} from "./summaryLayout";
import { summarySets } from "./summarySets";
import { summarySystem } from "./summarySystem";

const LAST = CAUTIONS + 5;

/** One printed page for the club: what each hood gets, what the fan does, what to mend, and on what all that rests. */
export const summarySheet: SheetOf<SummaryContents> = (frame, contents) => ({
  name: frame.sheet("summary"),
  columns: [25, 12, 11, 11, 13, 59],
  tallRows: [
    { row: HOODS_HEADER, lines: 3 },
    { row: SETS_HEADER, lines: 2 },
  ],
  frozen: { rows: 0, columns: 0 },
  cells: [
    text("A1", "Air budget in one page", "title"),
    formula("A3", `=${frame.ref("flow", FLOW_SYSTEM_CELL)}`, "note"),
    ...whose(contents),
    ...summaryHoods(frame),
    ...summarySets(frame),
    ...summarySystem(frame),
    ...assumptions(frame),
    ...cautions(frame),
  ],
  lists: [],
  flags: [
    ...Object.values(HOOD_FLAGS).map((containsText) => ({
      range: `F${HOODS_HEADER + 1}:F${SETS_HEADER + MOST_SETS_SHOWN}`,
      containsText,
      style: "flag" as const,
    })),
    { range: MORE_CELL, containsText: LOOK, style: "flag" },
    { range: "A3", containsText: LOOK, style: "flag" },
  ],
  print: { ...printing(frame, "portrait"), pagesHigh: 1, area: `A1:F${LAST}` },
});

/** Texts that a person fills, beside the title: a boxed cell shows no more than its own width. */
function whose({ workshop, numbers }: SummaryContents): SheetCell[] {
  return [
    text("E1", "Workshop", "label"),
    input(WORKSHOP_CELL, workshop),
    text("E2", "Numbers", "label"),
    input("F2", numbers, { note: "Measured, read from drawings, guessed: say so to whoever reads this page." }),
    text("E3", "Date", "label"),
    input("F3", null, { format: "@", note: "As you write it: this page does not change it." }),
    text(MAKER.labelCell, MAKER.label, "label"),
    input(MAKER.cell, null),
  ];
}

function assumptions(frame: Frame): SheetCell[] {
  const start = (address: string): string => frame.ref("start", address);
  const air = `${start(TEMPERATURE_CELL)}&" "&${unitWord(frame, "temperature")}&", "&${start(ALTITUDE_CELL)}&" "&${unitWord(frame, "length")}&" above the sea"`;
  const velocity = rounded(frame, frame.name("transport"), { IP: 0, SI: 1 });
  return [
    text(`A${ASSUMED}`, "What this rests on", "section"),
    text(`A${ASSUMED + 1}`, "Units", "label"),
    formula(`B${ASSUMED + 1}`, `=IF(${frame.name("units")}="SI","SI: m³/h, m/s, Pa","I-P: cfm, fpm, in.w.g.")`),
    text(`A${ASSUMED + 2}`, "Air density", "label"),
    formula(`B${ASSUMED + 2}`, `=${frame.name("density")}`, "total", { format: formatOf(frame, "density") }),
    formula(`C${ASSUMED + 2}`, unitOnly(frame, "density"), "unit"),
    formula(`D${ASSUMED + 2}`, `=${air}`, "unit"),
    text(`A${ASSUMED + 3}`, "Dust carried", "label"),
    formula(
      `B${ASSUMED + 3}`,
      `=IFERROR(${frame.name("dust")}&"; settles under "&${velocity}&" "&${unitWord(frame, "velocity")},"see ${frame.sheet("start")}")`,
    ),
    text(`A${ASSUMED + 4}`, "The numbers are", "label"),
    formula(`B${ASSUMED + 4}`, `=IF(F2="","not said",F2)`),
  ];
}

/** In short; the sheet Cautions has them whole, with their sources. */
function cautions(frame: Frame): SheetCell[] {
  const more = frame.has("cautions") ? ` The sheet ${frame.sheet("cautions")} says more, with sources.` : "";
  const lines = [
    "Computed figures are estimates: a reading in the duct decides.",
    "Enough air in a pipe does not mean that its hood catches the dust.",
    "Wood dust can harm lungs and can explode. Power off and locked before hands go in.",
    "Local codes for fire, building, labour and electricity, and licensed practice, come first." + more,
  ];
  return [
    text(`A${CAUTIONS}`, "Cautions in short", "section"),
    ...lines.map((line, index) => text(`A${CAUTIONS + 1 + index}`, line)),
  ];
}
