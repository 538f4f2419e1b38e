import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { blockOf, thisRow } from "../parts/block";
import { formatOf } from "../parts/units";
import { bySystem, headingIn, unitWord } from "../parts/units";
import type { AreaReading } from "./contents";
import { AREAS, AREAS_FIRST, AREAS_LAST, inAreas, plain } from "./layout";

const ENTERED_NOTE = "The area that stands in the meter's own settings, as it shows it, in the unit of this heading.";
const DUCT_NOTE =
  "Inside diameter where the probe stood. For a vane head held over a slot: the diameter of the head, which reads its own face.";
const FACTOR_NOTE = "Area entered over true area: what the meter showed is off by this factor.";

/** A meter that computes airflow multiplies by whatever area it was given. */
export function areas(frame: Frame, readings: readonly AreaReading[]): SheetCell[] {
  const trueAreas = `=DUCT.AREA(${plain(inAreas("K"))},,${frame.name("units")})`;
  const corrected = `=DUCT.CORRECTEDREADING(${plain(inAreas("L"))},${plain(inAreas("M"))},${plain(inAreas("N"))})`;
  const area = frame.units === "SI" ? "0.00000" : "0.0000";
  const cells: SheetCell[] = [
    text(`A${AREAS - 2}`, "1. A wrong area in the meter", "section"),
    text(
      `A${AREAS - 1}`,
      "A meter that computes airflow multiplies by the area it was given. Where that is not the duct's own, the airflow is off by the same factor.",
      "note",
    ),
    ...headers(frame),
    ...blockOf(inAreas("E"), area, trueAreas),
    ...blockOf(inAreas("G"), formatOf(frame, "airflow"), corrected),
  ];
  for (let at = AREAS_FIRST; at <= AREAS_LAST; at++) {
    const reading = readings[at - AREAS_FIRST];
    cells.push(
      input(`A${at}`, reading?.name ?? null),
      input(`B${at}`, reading?.diameter ?? null),
      input(`C${at}`, reading?.entered ?? null),
      input(`D${at}`, reading?.shown ?? null, { format: formatOf(frame, "airflow") }),
      formula(`F${at}`, `=IF(COUNT(N${at})=0,"",${typed("C")}/N${at})`, "result", { format: "0.00" }),
      formula(`H${at}`, `=${check(frame, at)}`, "total"),
      formula(
        `K${at}`,
        `=IF(COUNT(${typed("B")})=0,"",IF(AND(${typed("B")}>0,${typed("B")}<=${widest(frame)}),${typed("B")},""))`,
      ),
      formula(`L${at}`, `=IF(COUNT(N${at})=0,"",${typed("D")})`),
      formula(`M${at}`, `=IF(COUNT(N${at})=0,"",${typed("C")})`),
      formula(`N${at}`, `=IF(${soundRow(frame, at)},E${at},"")`, "result", { format: area }),
    );
  }
  return cells;
}

function headers(frame: Frame): SheetCell[] {
  const number = "numberHeader";
  return [
    text(`A${AREAS}`, "Reading at", "header"),
    formula(`B${AREAS}`, headingIn(frame, "Duct across", "diameter"), number, { note: DUCT_NOTE }),
    formula(`C${AREAS}`, headingIn(frame, "Area entered in the meter", "area"), number, { note: ENTERED_NOTE }),
    formula(`D${AREAS}`, headingIn(frame, "Meter showed", "airflow"), number),
    formula(`E${AREAS}`, headingIn(frame, "True area", "area"), number),
    text(`F${AREAS}`, "Factor", number, { note: FACTOR_NOTE }),
    formula(`G${AREAS}`, headingIn(frame, "Corrected", "airflow"), number),
    text(`H${AREAS}`, "Check", "header"),
    formula(`K${AREAS}`, headingIn(frame, "Handed on: duct", "diameter"), number),
    formula(`L${AREAS}`, headingIn(frame, "Handed on: reading", "airflow"), number),
    formula(`M${AREAS}`, headingIn(frame, "Handed on: entered", "area"), number),
    formula(`N${AREAS}`, headingIn(frame, "Handed on: true", "area"), number),
  ];
}

const typed = (letters: string): string => thisRow(letters, AREAS, AREAS_LAST);

/** The widest duct that the functions take: 20 m. */
export const widest = (frame: Frame): string => bySystem(frame, "787", "20000");

/** What no meter shows: 60 m/s through the area that was entered, more than any dust duct carries. A house judgement. */
const most = (frame: Frame): string => `${typed("C")}*${bySystem(frame, "11811", "216000")}`;

/** What no dust duct carries that is worth a reading: 1 m/s. A house judgement. */
const least = (frame: Frame): string => `${typed("C")}*${bySystem(frame, "197", "3600")}`;

const soundRow = (frame: Frame, at: number): string =>
  `IF(OR(COUNT(${typed("C:D")})<2,COUNT(E${at})=0),FALSE,AND(${typed("C")}>0,${typed("D")}>=0,${typed("D")}<=${most(frame)}))`;

/** Entered beside true area in words; a tenth is more than any honest measuring of a diameter is off. */
function check(frame: Frame, at: number): string {
  const factor = `F${at}`;
  const power = (words: string): string => `IF(ABS(LOG(${factor})-ROUND(LOG(${factor}),0))<0.01,${words},"")`;
  const places = `ABS(ROUND(LOG(${factor}),0))`;
  const decimal = power(`", the decimal place is off by "&${places}`);
  const large = `IF(${factor}>=2,ROUND(${factor},1)&" times too large"&${decimal},ROUND(100*(${factor}-1),0)&" % too large")`;
  const small = `IF(${factor}<=0.5,ROUND(1/${factor},1)&" times too small"&${decimal},ROUND(100*(1-${factor}),0)&" % too small")`;
  const slip = `"slip: the area entered is "&IF(${factor}>1,${large},${small})`;
  const cases: readonly (readonly [string, string])[] = [
    [`COUNTA(${typed("B:D")})=0`, '""'],
    [`COUNTA(${typed("B:D")})<3`, '"type the duct, the area in the meter and what it showed"'],
    [`COUNT(${typed("B:D")})<3`, '"check it: these three must be numbers"'],
    [`${typed("B")}<=0`, '"check it: the duct must be above 0"'],
    [`COUNT(K${at})=0`, `"check it: the duct must be at most "&${widest(frame)}&" "&${unitWord(frame, "diameter")}`],
    [`${typed("C")}<=0`, '"check it: the area entered must be above 0"'],
    [`${typed("D")}<0`, '"check it: a reading cannot be below 0"'],
    [
      `${typed("D")}>${most(frame)}`,
      `"check it: through the area entered this is above "&${bySystem(frame, '"11811 fpm"', '"60 m/s"')}&", more than a meter reads"`,
    ],
    [`COUNT(${factor})=0`, '""'],
    [
      `AND(ABS(${factor}-1)<=0.1,${typed("D")}>0,${typed("D")}<${least(frame)})`,
      `"counts, but through the area entered this is under "&${bySystem(frame, '"197 fpm"', '"1 m/s"')}&": a decimal place?"`,
    ],
    [`ABS(${factor}-1)<=0.1`, '"the areas agree within 10 %"'],
  ];
  return cases.reduceRight((otherwise, [when, says]) => `IF(${when},${says},${otherwise})`, slip);
}
