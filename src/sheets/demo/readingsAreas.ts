import { formula, input, text } from "../cells";
import type { SheetCell } from "../workbook";
import { blockOf } from "./readingsBlock";
import { AREAS, AREAS_FIRST, AREAS_LAST, inAreas } from "./readingsLayout";
import { headingIn } from "./readingsUnits";

/** Invented readings: the first with a decimal place off in the area, the second sound. */
const READINGS = [
  { name: "band saw", diameter: 4, entered: 0.873, shown: 3120 },
  { name: "drum sander", diameter: 5, entered: 0.136, shown: 415 },
] as const;

const ENTERED_NOTE = "The area that stands in the meter's own settings, as it shows it, in the unit of this heading.";

/** The commonest slip: a meter that computes airflow multiplies by whatever area it was given. */
export function areas(): SheetCell[] {
  const plain = (letter: string): string => inAreas(letter).replaceAll("$", "");
  const trueAreas = `=DUCT.AREA(${plain("B")},,units)`;
  const corrected = `=DUCT.CORRECTEDREADING(${plain("D")},${plain("C")},${plain("E")})`;
  const cells: SheetCell[] = [
    text(`A${AREAS - 2}`, "2. A wrong area in the meter", "section"),
    text(
      `A${AREAS - 1}`,
      "A meter that computes airflow multiplies by the area it was given: a decimal place off there, and the airflow is off by the same factor.",
      "note",
    ),
    text(`A${AREAS}`, "Reading at", "header"),
    formula(`B${AREAS}`, headingIn("Duct across", "diameter"), "numberHeader"),
    formula(`C${AREAS}`, headingIn("Area entered in the meter", "area"), "numberHeader", { note: ENTERED_NOTE }),
    formula(`D${AREAS}`, headingIn("Meter showed", "airflow"), "numberHeader"),
    formula(`E${AREAS}`, headingIn("True area", "area"), "numberHeader"),
    formula(`F${AREAS}`, headingIn("Corrected", "airflow"), "numberHeader"),
    text(`G${AREAS}`, "Check", "header"),
    ...["H", "I", "J"].map((letter) => ({ at: `${letter}${AREAS}`, value: null, style: "header" }) as const),
    ...blockOf(inAreas("E"), "0.0000", trueAreas),
    ...blockOf(inAreas("F"), "#,##0", corrected),
  ];
  for (let at = AREAS_FIRST; at <= AREAS_LAST; at++) {
    const reading = READINGS[at - AREAS_FIRST];
    cells.push(
      input(`A${at}`, reading?.name ?? null),
      input(`B${at}`, reading?.diameter ?? null),
      input(`C${at}`, reading?.entered ?? null),
      input(`D${at}`, reading?.shown ?? null, { format: "#,##0" }),
      formula(`G${at}`, check(at), "total"),
    );
  }
  return cells;
}

/** Entered beside true area in words; a tenth is more than any honest measuring of a diameter is off. */
function check(at: number): string {
  const [entered, trueArea] = [`C${at}`, `E${at}`];
  const ratio = `${entered}/${trueArea}`;
  const large = `IF(${ratio}>=2,ROUND(${ratio},1)&" times too large",ROUND(100*(${ratio}-1),0)&" % too large")`;
  const small = `IF(${ratio}<=0.5,ROUND(${trueArea}/${entered},1)&" times too small",ROUND(100*(1-${ratio}),0)&" % too small")`;
  const words = `IF(ABS(${ratio}-1)<=0.1,"the areas agree within 10 %","slip: the area in the meter is "&IF(${ratio}>1,${large},${small}))`;
  const sound = `IF(${entered}<=0,"the area entered must be above 0",${words})`;
  const nothing = `IF(COUNT(B${at}:D${at})=0,"","type the duct, the area in the meter and what it showed")`;
  return `=IF(COUNT(${entered},${trueArea})<2,${nothing},${sound})`;
}
