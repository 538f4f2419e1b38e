import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { blockOf } from "../parts/block";
import { bySystem, formatOf, headingIn, unitWord } from "../parts/units";
import {
  FLOW_PLACE,
  HEAD_CELL,
  inLog,
  inWorked,
  LOG_FIRST,
  LOG_LAST,
  METER,
  SAVED,
  SUCTION_HANDED,
  TURNED,
  UNIT_LEAK_CELL,
  WORKED,
  WORKED_NOTES,
  workedRow,
} from "./layout";
import { differenceCall, floor, percent } from "./meter";
import { workedGate } from "./workedGate";

const ESTIMATE_NOTE =
  "An estimate of common practice for that condition and diameter at the typed suction: measure yours.";
const AT_ONE_NOTE =
  "The same at a suction of 1. A leak goes with the root of the suction, so column C waits for no other function.";
const AREA_NOTE = "The opening that would pass the leak at the typed suction. It is what a patch has to close.";
const CHANCE_NOTE =
  "What chance alone makes of no change, once in 20 times, by how far the readings above stray. The meter's own lasting error and a wrong area are in both readings and drop out.";
const NEEDED_NOTE = "How many readings before, and as many after, would show such a difference eight times of ten.";
const WAITS_NOTE =
  "Not mended, and more than the meter's error: the leak at the suction of the sheet Flow, or as read where there is none.";
const HANDED_NOTE = "Only what is sound is handed on, so that a wrong reading spoils no other row.";
const SPEED_NOTE =
  "Airflow over the area of the head. A 0 is handed on as 0.001, since the functions take 0 for a blank.";

const plain = (range: string): string => range.replaceAll("$", "");
const block = (letters: string): string => plain(inWorked(letters));

/** The functions over whole columns, each named where its answer stands. */
const codes = (frame: Frame) => {
  const [units, density] = [frame.name("units"), frame.name("density")];
  return {
    estimate: `=DUCT.GATELEAK(${block("U")},${block("V")},1,${density},${units})`,
    unitLeak: `=DUCT.LEAK(1,1,,${density},${units})`,
    error: `=DUCT.AIRFLOWERROR(${block("Q")},${HEAD_CELL},${percent},${floor(frame)},,${units})`,
  };
};

/**
 * What the log means, gate by gate: functions over whole columns, and ordinary formulas. What goes with the root of the suction is
 * asked of the functions at a suction of 1: the suction itself may come from SOLVE, and a host asks for one function after the other.
 */
export function workedOut(frame: Frame): SheetCell[] {
  const { estimate, unitLeak, error } = codes(frame);
  const leak = formatOf(frame, "leak");
  const cells: SheetCell[] = [
    text(`A${WORKED - 2}`, "The same gates, worked out", "section"),
    text(
      `A${WORKED - 1}`,
      `Columns K to ${TURNED}, at the right, hold the meter's error and what the functions are handed.`,
      "note",
    ),
    ...headers(frame),
    ...blockOf(inWorked("Y"), leak, estimate),
    formula(plain(UNIT_LEAK_CELL), unitLeak, "result", { format: frame.units === "SI" ? "0.0000" : "0.00" }),
    ...blockOf(inWorked("R"), leak, error),
    ...[
      `Y: ${estimate}`,
      `Z: ${unitLeak}`,
      "C: Y times the root of the suction. E, F: the leak times the root of D over the suction while it was read. G, H: the leak over Z and the root of that suction.",
      `R: ${error}`,
      `S: ${differenceCall}, grown with the larger reading`,
    ].map((words, index) => text(`A${WORKED_NOTES + index}`, words, "note")),
  ];
  for (let at = LOG_FIRST; at <= LOG_LAST; at++) cells.push(...workedGate(frame, workedRow(at)));
  return cells;
}

function headers(frame: Frame): SheetCell[] {
  const named = (letter: string, words: string, note?: string): SheetCell =>
    text(`${letter}${WORKED}`, words, "numberHeader", note === undefined ? {} : { note });
  const measured = (
    letter: string,
    words: string,
    quantity: Parameters<typeof headingIn>[2],
    note?: string,
  ): SheetCell =>
    formula(
      `${letter}${WORKED}`,
      headingIn(frame, words, quantity),
      "numberHeader",
      note === undefined ? {} : { note },
    );
  return [
    text(`A${WORKED}`, "Gate", "header"),
    named("B", "Mend in order"),
    measured("C", "Estimate for its condition", "airflow", ESTIMATE_NOTE),
    measured("D", "At a suction of", "pressure"),
    measured("E", "it leaks before", "airflow"),
    measured("F", "and after", "airflow"),
    measured("G", "Leak area before", "openArea", AREA_NOTE),
    measured("H", "Leak area after", "openArea", AREA_NOTE),
    formula(`I${WORKED}`, `="Cost per "&${unitWord(frame, "airflow")}&" saved"`, "numberHeader"),
    text(`J${WORKED}`, "Where the suction in D comes from", "header"),
    measured("K", "Handed on, before", "airflow", HANDED_NOTE),
    measured("L", "Handed on, after", "airflow", HANDED_NOTE),
    measured("M", "Suction, before", "pressure"),
    measured("N", "Suction, after", "pressure"),
    measured("O", "Other suction, before", "pressure"),
    measured("P", "Other suction, after", "pressure"),
    measured("Q", "In the head, before", "velocity", SPEED_NOTE),
    measured("R", "± before, by the meter's data sheet", "airflow"),
    measured("S", "± of the difference, by chance", "airflow", CHANCE_NOTE),
    named("T", "Readings needed, each", NEEDED_NOTE),
    text(`U${WORKED}`, "Condition", "header"),
    measured("V", "Across", "diameter"),
    measured("W", "Suction", "pressure"),
    measured("X", "Waits to be mended", "airflow", WAITS_NOTE),
    measured("Y", "Estimate at a suction of 1", "airflow", AT_ONE_NOTE),
    formula(
      `Z${WORKED}`,
      `="1 "&${bySystem(frame, '"in²"', '"mm²"')}&" leaks at a suction of 1 ("&${unitWord(frame, "airflow")}&")"`,
      "numberHeader",
    ),
    measured(SAVED, "Saved", "airflow"),
    measured(SUCTION_HANDED, "Handed on, suction", "pressure"),
    named(FLOW_PLACE, "Its place on Flow"),
    text(`${TURNED}${WORKED}`, "Gate turned since", "header"),
  ];
}

/** The name of the gate to mend next, in words where there is none. */
export const nextGate = `IF(COUNT(${inWorked("B")})=0,IF(COUNT(${inWorked("K")})=0,"no leak logged yet",IF(COUNT(${inWorked("R")})=0,IF(ISERROR($R$${WORKED + 1}),"see R${WORKED + 1}","see B${METER + 1} to B${METER + 3}"),"none left")),INDEX(${inLog("A")},MATCH(1,${inWorked("B")},0)))`;
