import { formula, input, text } from "../../cells";
import type { ChoiceList, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { blockOf, thisRow } from "../parts/block";
import { bySystem, headingIn, unitOnly, unitWord } from "../parts/units";
import { readingOf } from "../parts/zeros";
import { widest } from "./areas";
import type { TraverseReadings } from "./contents";
import {
  DUCT_CELL,
  FLOOR_CELL,
  inTraverse,
  KIND_CELL,
  PERCENT_CELL,
  plain,
  POINTS_CELL,
  TRAVERSE,
  TRAVERSE_FIRST,
  TRAVERSE_LAST,
} from "./layout";

const POINTS_NOTE =
  "4, 6, 8 or 10 on a line across a round duct. Blank: the number that is usual for the duct's size. Then read as many.";
const KIND_NOTE =
  "velocity, or velocity pressure from a Pitot tube. Pressures are averaged as roots: the root of their mean would be too high.";
const PERCENT_NOTE =
  "From the meter's own data sheet. Blank: 3 %, of a vane meter, from memory; the table meters has others.";
const FLOOR_NOTE =
  "From the meter's own data sheet. Blank: 0.2 m/s (39.4 fpm), of a vane meter, from memory; the table meters has others.";

const HANDED_NOTE =
  "What TRAVERSE is handed: a blank as not read, a 0 as still, since some programs send a function a blank as 0.";

export const kindList: ChoiceList = {
  range: plain(KIND_CELL),
  choices: ["velocity", "velocity pressure"],
  strict: true,
};
export const pointsList: ChoiceList = { range: plain(POINTS_CELL), choices: ["4", "6", "8", "10"], strict: false };

const ofPressures = `${KIND_CELL}="velocity pressure"`;
export const ductIsSound = (frame: Frame): string =>
  `AND(COUNT(${DUCT_CELL})=1,${DUCT_CELL}>0,${DUCT_CELL}<=${widest(frame)})`;
const pointsAreSound = `OR(${POINTS_CELL}="",${POINTS_CELL}=4,${POINTS_CELL}=6,${POINTS_CELL}=8,${POINTS_CELL}=10)`;

/** The largest plausible reading: 60 m/s, or its velocity pressure in this air. */
function most(frame: Frame): string {
  const density = frame.name("density");
  const pressure = bySystem(frame, `${density}*0.45359237/0.3048^3*1800/248.84`, `${density}*1800`);
  return `IF(${ofPressures},${pressure},${bySystem(frame, "11811", "60")})`;
}

/** Depths for the probe, two readings beside each, and a word where one is missing or wrong. */
export function traverse(frame: Frame, given: TraverseReadings | null): SheetCell[] {
  const depths = `DUCT.TRAVERSEPOINTS(${DUCT_CELL},${POINTS_CELL},,${frame.name("units")})`;
  const cells: SheetCell[] = [
    ...settings(frame, given),
    formula(`A${TRAVERSE}`, headingIn(frame, "Depth from the wall", "diameter"), "numberHeader"),
    formula(`B${TRAVERSE}`, readingHeader(frame, "Across"), "numberHeader"),
    formula(`C${TRAVERSE}`, readingHeader(frame, "Up and down"), "numberHeader"),
    text(`D${TRAVERSE}`, "Check", "header"),
    text(`K${TRAVERSE}`, "Handed on: across", "numberHeader", { note: HANDED_NOTE }),
    text(`L${TRAVERSE}`, "Handed on: up and down", "numberHeader", { note: HANDED_NOTE }),
    ...["E", "F", "G", "H"].map((letter) => ({ at: `${letter}${TRAVERSE}`, value: null, style: "header" }) as const),
    ...blockOf(
      inTraverse("A"),
      frame.units === "SI" ? "0.0" : "0.00",
      `=IF(AND(${ductIsSound(frame)},${pointsAreSound}),${depths},"")`,
    ),
  ];
  const format = frame.units === "SI" ? { format: "0.0" } : {}; // as typed: it may be 2650 or 0.35
  for (let at = TRAVERSE_FIRST; at <= TRAVERSE_LAST; at++) {
    const pair = given?.readings[at - TRAVERSE_FIRST];
    cells.push(
      input(`B${at}`, pair?.[0] ?? null, format),
      input(`C${at}`, pair?.[1] ?? null, format),
      formula(`D${at}`, `=${pointCheck(frame, at)}`, "total"),
      formula(`K${at}`, `=${readingOf(typed("B"))}`),
      formula(`L${at}`, `=${readingOf(typed("C"))}`),
    );
  }
  return cells;
}

const typed = (letters: string): string => thisRow(letters, TRAVERSE, TRAVERSE_LAST);

const readingHeader = (frame: Frame, words: string): string =>
  `="${words} ("&IF(${ofPressures},${unitWord(frame, "pressure")},${unitWord(frame, "velocity")})&")"`;

function settings(frame: Frame, given: TraverseReadings | null): SheetCell[] {
  const row = (cell: string): string => plain(cell).slice(1);
  const label = (cell: string, words: string): SheetCell => text(`A${row(cell)}`, words, "label");
  const unit = (cell: string, code: string): SheetCell => formula(`C${row(cell)}`, code, "unit");
  return [
    text(`A${TRAVERSE - 7}`, "2. A duct traverse", "section"),
    text(
      `D${TRAVERSE - 7}`,
      "Hold the probe at each depth, along two lines at right angles, far behind any bend.",
      "note",
    ),
    label(DUCT_CELL, "Duct, across"),
    input(plain(DUCT_CELL), given?.diameter ?? null),
    unit(DUCT_CELL, unitOnly(frame, "diameter")),
    formula(`D${row(DUCT_CELL)}`, `=${settingsCheck(frame)}`, "total"),
    label(POINTS_CELL, "Points on a line"),
    input(plain(POINTS_CELL), given?.points ?? null, { note: POINTS_NOTE }),
    label(KIND_CELL, "What is read"),
    input(plain(KIND_CELL), "velocity", { note: KIND_NOTE }),
    label(PERCENT_CELL, "Meter, ± of the reading"),
    input(plain(PERCENT_CELL), null, { note: PERCENT_NOTE }),
    text(`C${row(PERCENT_CELL)}`, "% (blank: 3)", "unit"),
    label(FLOOR_CELL, "Meter, ± whatever it reads"),
    input(plain(FLOOR_CELL), null, { note: FLOOR_NOTE }),
    unit(FLOOR_CELL, `=${bySystem(frame, '"fpm (blank: 39.4)"', '"m/s (blank: 0.2)"')}`),
  ];
}

function settingsCheck(frame: Frame): string {
  const wide = `"check it: the duct must be a number above 0, at most "&${widest(frame)}&" "&${unitWord(frame, "diameter")}`;
  return `IF(${DUCT_CELL}="","type the duct's inside diameter",IF(${ductIsSound(frame)},IF(${pointsAreSound},"","check it: the points must be 4, 6, 8 or 10"),${wide}))`;
}

/** A word beside a depth whose readings are missing, and beside any reading that cannot be. */
function pointCheck(frame: Frame, at: number): string {
  const pair = typed("B:C");
  const cases: readonly (readonly [string, string])[] = [
    [`AND(A${at}="",COUNTA(${pair})=0)`, '""'],
    [`A${at}=""`, '"check it: no depth belongs to this reading, clear it"'],
    [`COUNTA(${pair})=0`, '"read both lines here"'],
    [`COUNT(${pair})<COUNTA(${pair})`, '"check it: a reading must be a number"'],
    [`MIN(${pair})<0`, '"check it: a reading cannot be below 0"'],
    [
      `MAX(${pair})>${most(frame)}`,
      `"check it: above "&${bySystem(frame, '"11811 fpm"', '"60 m/s"')}&IF(${ofPressures}," in velocity","")&", more than any dust duct carries"`,
    ],
    [`COUNT(${pair})<2`, '"read the other line too"'],
    [`MIN(${pair})=0`, '"a 0 counts: the air stood still here"'],
    [
      `MIN(${pair})<MAX(${inTraverse("B:C")})/IF(${ofPressures},100,10)`, // a pressure goes with the square
      '"counts, but the air is ten times as fast elsewhere: a decimal place?"',
    ],
  ];
  return cases.reduceRight((otherwise, [when, says]) => `IF(${when},${says},${otherwise})`, '""');
}
