import { fanCurveColumns } from "../../../reference/answerColumns";
import { type ThrottleColumn, throttleColumns } from "../../../reference/throttleColumns";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CURVE_HEADER, CURVE_LAST } from "../layout";
import { aboveHeadings } from "../parts/aboveHeadings";
import { answerCell } from "../parts/answerReferences";
import { spillOf } from "../parts/spill";
import { tableEnd } from "../parts/tableEnd";
import { formatOf, headingIn } from "../parts/units";
import type { FanContents } from "./fanContents";
import {
  OWN,
  OWN_ANSWER,
  OWN_DIAMETER,
  OWN_SAYS,
  PRINTED,
  THROTTLES,
  THROTTLES_LAST,
  USED,
  USED_CELL,
} from "./fanLayout";

/** The columns in their places from A on. What FANCURVE does not know, Throttle, is the owner's own word. */
const places: readonly (ThrottleColumn | "Throttle")[] = ["Velocity", "Airflow", "Suction", "After", "Times", "Throttle", "Air ±", "Pressure ±", "Use"]; // prettier-ignore
const letterOf = (index: number): string => "ABCDEFGHI"[index]!;
const DIAMETER_NOTE = "Of the duct in which it was read: straight, in front of the fan. Inside, where it is read.";

/** What the owner read at the fan with its duct throttled, and the curve with its ± that it makes. */
export function ownCurve(frame: Frame, { throttles }: FanContents): SheetCell[] {
  const printed = `$${PRINTED.airflow}$${CURVE_HEADER}:$${PRINTED.pressure}$${CURVE_LAST}`;
  const readings = `$A$${THROTTLES}:$I$${THROTTLES_LAST}`;
  const call = `DUCT.FANCURVE(${readings},${OWN_DIAMETER},${printed},"printed",${frame.name("density")},${frame.name("units")})`;
  const suctions = `$C$${THROTTLES + 1}:$C$${THROTTLES_LAST}`;
  const first = answerCell(OWN_ANSWER, "inWords", THROTTLES + 1);
  const header = `$K$${THROTTLES}`;
  const none = "Nothing is read yet";
  const formats = fanCurveColumns.map(({ key, quantity }) =>
    key === "share" ? "0" : quantity === null ? null : formatOf(frame, quantity),
  );
  const rows = Array.from({ length: THROTTLES_LAST - THROTTLES }, (_, index) =>
    places.map((name, place) =>
      input(`${letterOf(place)}${THROTTLES + 1 + index}`, throttles?.rows[index]?.[name] ?? null),
    ),
  );
  return [
    text(`A${OWN}`, "What your own fan gives", "section"),
    text(
      `A${OWN + 1}`,
      `Read at three throttles or more, from nearly shut to wide open. Choose "${USED.read}" in ${USED_CELL.replaceAll("$", "")}, and all sheets take that curve.`,
      "note",
    ),
    formula(`A${OWN + 2}`, headingIn(frame, "Read in a duct of", "diameter"), "label"),
    input(OWN_DIAMETER.replaceAll("$", ""), throttles?.diameter ?? null, { note: DIAMETER_NOTE }),
    ...(throttles === null ? [] : [text(`D${OWN + 2}`, throttles.invented, "note")]),
    formula(
      OWN_SAYS,
      `=${aboveHeadings("C", OWN + 1, THROTTLES)}&IFERROR(IF(${header}="${none}","",${first}&""),"These readings make no curve: see ${header.replaceAll("$", "")}")`,
      "total",
    ),
    ...places.map((name, place): SheetCell => {
      const at = `${letterOf(place)}${THROTTLES}`;
      const known = throttleColumns.find((column) => column.name === name);
      if (known === undefined) return text(at, name, "header", { note: "Where the gate stood, in your own words." });
      return known.quantity === null
        ? text(at, name, "header", { note: known.hint })
        : formula(at, headingIn(frame, name, known.quantity), "numberHeader", { note: known.hint });
    }),
    ...rows.flat(),
    tableEnd(`A${THROTTLES_LAST + 1}`),
    ...spillOf(OWN_ANSWER.column, THROTTLES, OWN_ANSWER.last, formats, `=IF(COUNT(${suctions})=0,"${none}",${call})`),
    text(`K${THROTTLES - 1}`, `One formula fills this table: =${call}`, "note"),
  ];
}
