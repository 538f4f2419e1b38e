import { transport } from "../../../reference/transport";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { farSaid, howManyFar, madeForOthers } from "../parts/farAcross";
import { LOOK } from "../parts/look";
import { SETTLES } from "../parts/notes";
import { printing } from "../parts/printing";
import { formatOf, unitOnly } from "../parts/units";
import { temperatureOf } from "../parts/zeros";
import { airDoubts } from "./airDoubts";
import type { StartContents } from "./startContents";
import { AIR_SAID, ALTITUDE_CELL, namedCells, SETTINGS, STEPS, TEMPERATURE_CELL, UNITS_SAID } from "./startLayout";
import { lookUps, steps } from "./startSteps";

const UNITS_NOTE =
  "IP or SI. Every formula of the budget takes its units from this cell, and headings follow it. Numbers that are typed already are not converted: choose before you type.";
const TEMPERATURE_NOTE = "Of the air in the ducts: the workshop's own temperature will do. Blank: 70 °F (21 °C).";
const ALTITUDE_NOTE = "Height of the workshop above the sea. Thin air costs less pressure, and a fan makes less of it.";
const DENSITY_NOTE =
  "Computed from temperature and altitude, for dry air at that altitude's usual pressure. A density that you know may be typed over it.";
const DUST_NOTE =
  "A name from the table transport. The sheet Runs takes it for every run; a run that carries something else may say so there.";
const TRANSPORT_NOTE =
  "Below this velocity in a duct that dust settles. It is the low end of the table's range; the table names what disagrees.";

/** Settings, the order of the work, and the legend. */
export const startSheet: SheetOf<StartContents> = (frame, contents) => {
  const list = stepCells(frame);
  const legend = STEPS + list.rows + 2;
  return {
    name: frame.sheet("start"),
    columns: [24, 18, 9, 70],
    tallRows: [{ row: 11, lines: 2 }],
    frozen: { rows: 0, columns: 0 },
    cells: [...titleCells(contents), ...settings(frame, contents), ...list.cells, ...legendAndCautions(frame, legend)],
    lists: [
      { range: plain(namedCells.units), choices: ["IP", "SI"], strict: true },
      { range: plain(namedCells.dust), choices: transport.map(({ key }) => key), strict: false },
    ],
    flags: [UNITS_SAID, "D7", "D8", "D9", "D11"].map((range) => ({ range, containsText: LOOK, style: "flag" })),
    print: printing(frame, "portrait"),
  };
};

const plain = (address: string): string => address.replaceAll("$", "");

function titleCells({ of, invented }: StartContents): SheetCell[] {
  return [
    text("A1", of === null ? "Air budget of a duct system" : `Air budget: ${of}`, "title"),
    text("A2", "Fill the boxed cells, sheet by sheet, in the order below. Everything else computes itself."),
    ...(invented === null ? [] : [text("A3", invented, "note")]),
  ];
}

function settings(frame: Frame, { temperature, altitude, dust }: StartContents): SheetCell[] {
  const units = frame.name("units");
  const column = `IF(${units}="SI","low (m/s)","low (fpm)")`;
  const transported = (place: number): string =>
    `INDEX(DUCT.REFERENCE("transport",${namedCells.dust},${column}),1,${place})`;
  const label = (row: number, words: string): SheetCell => text(`A${row}`, words, "label");
  return [
    formula(UNITS_SAID, `=${unitsSaid(frame)}`, "total"),
    text(`A${SETTINGS}`, "Settings", "section"),
    label(6, "Units"),
    input(plain(namedCells.units), frame.units, { note: UNITS_NOTE }),
    text("D6", "IP: cfm, fpm, in.w.g., in, ft. SI: m³/h, m/s, Pa, mm, m. Choose first.", "note"),
    label(7, "Air temperature"),
    input(plain(TEMPERATURE_CELL), temperature, { format: "0", note: TEMPERATURE_NOTE }),
    formula("C7", unitOnly(frame, "temperature"), "unit"),
    label(8, "Altitude"),
    input(plain(ALTITUDE_CELL), altitude, { format: "#,##0", note: ALTITUDE_NOTE }),
    formula("C8", unitOnly(frame, "length"), "unit"),
    label(9, "Air density"),
    formula(plain(namedCells.density), density(units), "result", {
      format: formatOf(frame, "density"),
      note: DENSITY_NOTE,
    }),
    formula("C9", unitOnly(frame, "density"), "unit"),
    formula(plain(AIR_SAID), airSaid, "note"),
    ...airDoubts(frame),
    label(10, "Dust carried"),
    input(plain(namedCells.dust), dust, { note: DUST_NOTE }),
    label(11, "Its transport velocity"),
    formula(plain(namedCells.transport), `=${transported(1)}`, "result", {
      format: formatOf(frame, "velocity"),
      note: TRANSPORT_NOTE,
    }),
    formula("C11", unitOnly(frame, "velocity"), "unit"),
    formula(
      "D11",
      `=IFERROR("In slower air it settles. Source: "&${transported(2)},"${LOOK} the dust in B10 must be a name of the table transport; a blank counts as wood dust")`,
      "paragraph",
    ),
  ];
}

/** Runs that fit these units no more, else that the book was made for the others. */
function unitsSaid(frame: Frame): string {
  const changed = madeForOthers(frame);
  return frame.has("runs") ? `IF(${howManyFar(frame)}>0,${farSaid(frame)}&".",${changed})` : changed;
}

/** A function takes standard air where the density is blank, and cannot say so: the sheet does. */
const airSaid = `=IF(ISERROR(${namedCells.density}),${quotedLook("no air density: units must be IP or SI, air temperature and altitude numbers that can be")},IF(ISNUMBER(${namedCells.density}),"From temperature and altitude.",IF(TRIM(${namedCells.density})="",${quotedLook("the air density is blank, so standard air is counted everywhere")},${quotedLook("the air density must be a number")})))`;

function quotedLook(words: string): string {
  return `"${LOOK} ${words}"`;
}

const density = (units: string): string =>
  `=IF(${TEMPERATURE_CELL}="",DUCT.DENSITY(,${ALTITUDE_CELL},,${units}),DUCT.DENSITY(${temperatureOf(TEMPERATURE_CELL)},${ALTITUDE_CELL},,${units}))`;

function stepCells(frame: Frame): { cells: SheetCell[]; rows: number } {
  const there = steps.filter(([key]) => frame.has(key));
  const beside = lookUps.filter(([key]) => frame.has(key));
  const lines = [
    ...there.map(([key, words], index) => [`${index + 1}. ${frame.sheet(key)}`, words] as const),
    ...beside.map(([key, words]) => [`To look up: ${frame.sheet(key)}`, words] as const),
  ];
  const cells = lines.flatMap(([name, words], index) => [
    text(`A${STEPS + 1 + index}`, name, "label"),
    text(`B${STEPS + 1 + index}`, words),
  ]);
  return { cells: [text(`A${STEPS}`, "What to do, in this order", "section"), ...cells], rows: lines.length };
}

function legendAndCautions(frame: Frame, at: number): SheetCell[] {
  const more = frame.has("cautions") ? ` More on the sheet ${frame.sheet("cautions")}.` : "";
  return [
    text(`A${at}`, "How to read the cells", "section"),
    input(`A${at + 1}`, "boxed cell"),
    text(`B${at + 1}`, "yours to fill"),
    text(`A${at + 2}`, "no box", "result"),
    text(
      `B${at + 2}`,
      "computed, or an explanation; a heading with a mark in its corner explains itself when selected",
    ),
    text(`A${at + 3}`, SETTLES, "flag"),
    text(`B${at + 3}`, "look here: the words in the cell, or in the note beside it, say why"),
    text(`A${at + 5}`, "Before you trust it", "section"),
    text(`A${at + 6}`, `Computed figures are estimates; a reading in the duct decides.${more}`),
    text(
      `A${at + 7}`,
      "Local codes for fire, building, labour and electricity, and licensed practice, come before anything computed here.",
    ),
  ];
}
