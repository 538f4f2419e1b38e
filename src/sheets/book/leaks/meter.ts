import { differenceColumns } from "../../../reference/answerColumns";
import { placeOfColumn } from "../../../reference/columnsOfAnswers";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { bySystem, formatOf, unitOnly, unitWord } from "../parts/units";
import { errorOf, readingOf } from "../parts/zeros";
import {
  CHANCE_CELL,
  FLOOR_CELL,
  HEAD_CELL,
  METER,
  MOST_CELL,
  PERCENT_CELL,
  REPEAT_LETTERS,
  REPEATS,
  REPEATS_HANDED,
  REPEATS_MEAN,
  REPEATS_TYPED,
} from "./layout";

const HEAD_NOTE = "Diameter of the meter's own opening: the air passes its face, so that is the area that counts.";
const ERROR_NOTE =
  "From the meter's own data sheet. Blank: 3 % of the reading, of a vane meter, from memory; the table meters has others.";
const FLOOR_NOTE =
  "From the meter's own data sheet. Blank: 0.2 m/s (39.4 fpm), of a vane meter, from memory; the table meters has others.";
const MOST_NOTE =
  "60 m/s (11811 fpm) through the head, more than hand-held meters read: a house judgement. A leak above it is refused.";

const REPEATS_NOTE =
  "One leak, one gate, nothing changed: take the head away and place it again for each reading. How far they lie apart is what chance does to any two readings.";
const HANDED_NOTE = "What DIFFERENCE is handed: a blank as not read, a 0 as still.";

const plain = (address: string): string => address.replaceAll("$", "");

/** The errors of the meter, with what stands for a blank. */
export const percent = errorOf(PERCENT_CELL, "3");
export const floor = (frame: Frame): string => errorOf(FLOOR_CELL, bySystem(frame, "39.37", "0.2"));

/** The area of the head, and the number by which velocity times that area is an airflow, both in the sheet's units. */
export const headArea = (frame: Frame): string => `(PI()/4*(${HEAD_CELL}/${bySystem(frame, "12", "1000")})^2)`;
export const hours = (frame: Frame): string => bySystem(frame, "1", "3600");

/** The meter that read the leaks: its head, its errors, and how far one of its readings lies from the next. */
export function meter(frame: Frame, head: number | null, repeats: readonly number[]): SheetCell[] {
  const most = `${headArea(frame)}*${bySystem(frame, "11811", "60*3600")}`;
  return [
    text(`A${METER}`, "The meter", "section"),
    text(`A${METER + 1}`, "Its head, across", "label"),
    input(plain(HEAD_CELL), head, { note: HEAD_NOTE }),
    formula(`C${METER + 1}`, unitOnly(frame, "diameter"), "unit"),
    text(`A${METER + 2}`, "± of the reading", "label"),
    input(plain(PERCENT_CELL), null, { note: ERROR_NOTE }),
    text(`C${METER + 2}`, "% (blank: 3)", "unit"),
    text(`A${METER + 3}`, "± whatever it reads", "label"),
    input(plain(FLOOR_CELL), null, { note: FLOOR_NOTE }),
    formula(`C${METER + 3}`, `=${bySystem(frame, '"fpm (blank: 39.4)"', '"m/s (blank: 0.2)"')}`, "unit"),
    text(`A${METER + 4}`, "It can read up to", "label", { note: MOST_NOTE }),
    formula(
      plain(MOST_CELL),
      `=IF(COUNT(${HEAD_CELL})=0,"",IF(${HEAD_CELL}>0,ROUND(${most},0),"a head must be above 0"))`,
      "result",
      { format: "#,##0", note: MOST_NOTE },
    ),
    formula(`C${METER + 4}`, `=IF(COUNT(${MOST_CELL})=0,"",${unitWord(frame, "airflow")})`, "unit"),
    ...repeated(frame, repeats),
    text(
      `D${METER + 1}`,
      "A vane head over a small slot reads its own face: take velocity times the head's area, not the slot's.",
      "note",
    ),
    text(`D${METER + 2}`, "The head also chokes the slot, so the true leak is larger: these are estimates.", "note"),
    text(`D${METER + 3}`, "Note the suction with each reading: it changes with the gates that are open.", "note"),
    text(
      `D${METER + 4}`,
      "Measure the leak itself, at the gate: no hood shows one taped gate, which gives it less air than two readings there differ by.",
      "note",
    ),
  ];
}

/** Whether a difference of two readings is more than chance, at the size of the leak that was read again: a mended gate was meant to leak less. */
export const differenceCall = `DUCT.DIFFERENCE(${REPEATS_MEAN},${REPEATS_MEAN},,,${REPEATS_HANDED},"less")`;

/** One leak read again and again, which says what chance does to a reading. */
function repeated(frame: Frame, repeats: readonly number[]): SheetCell[] {
  const few = `COUNT(${REPEATS_TYPED})<2`;
  const strays = `ROUND(STDEV(${REPEATS_TYPED}),1)&" "&${unitWord(frame, "airflow")}`;
  const leak = { format: formatOf(frame, "leak") };
  const limit = placeOfColumn(differenceColumns, "limit") + 1;
  return [
    text(`A${REPEATS}`, "One leak, read again", "label", { note: REPEATS_NOTE }),
    ...REPEAT_LETTERS.map((letter, index) => input(`${letter}${REPEATS}`, repeats[index] ?? null, leak)),
    formula(
      `J${REPEATS}`,
      `=IF(${few},"Read one leak twice or more here, or no difference gets a verdict.",IF(COUNTA(${REPEATS_TYPED})>COUNT(${REPEATS_TYPED}),"check it: the readings must be numbers, or no difference gets a verdict",IF(MAX(${REPEATS_TYPED})=MIN(${REPEATS_TYPED}),"These do not differ at all: read finer, or no difference gets a verdict.",IF(COUNT(${CHANCE_CELL})=0,"no difference gets a verdict: see ${plain(CHANCE_CELL)}","One reading strays from the next by "&${strays}&" (standard deviation)."))))`,
      "total",
    ),
    // equal ones where too few are typed: then DIFFERENCE says that nothing tells how they stray, and is no error
    ...REPEAT_LETTERS.map((letter, index) =>
      formula(`${"KLMNOPQR"[index]!}${REPEATS}`, `=IF(${few},1,${readingOf(`${letter}${REPEATS}`)})`, "result", {
        note: HANDED_NOTE,
      }),
    ),
    formula(plain(REPEATS_MEAN), `=IF(${few},1,AVERAGE(${REPEATS_TYPED}))`, "result", leak),
    formula(plain(CHANCE_CELL), `=INDEX(${differenceCall},2,${limit})`, "result", leak),
  ];
}
