import { type BudgetKey, fanCurveColumns, type SolveKey } from "../../../reference/answerColumns";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { CURVE_HEADER, CURVE_LAST } from "../layout";
import { BUDGET_ANSWER, fromAnswer, FLOW_ANSWER, ofFan } from "../parts/answerReferences";
import { cautionLine } from "../parts/cautionLine";
import { printing } from "../parts/printing";
import { tableEnd } from "../parts/tableEnd";
import { totals } from "../parts/totals";
import { formatOf, headingIn, unitOnly, unitWord } from "../parts/units";
import type { FanContents } from "./fanContents";
import {
  DRAWN_OWN,
  KIND_CELL,
  KINDS,
  OUTLET_CELL,
  PICTURE,
  POINT,
  POINT_AIRFLOW,
  SOURCE_CELL,
  THROTTLES,
  USED,
  USED_CELL,
} from "./fanLayout";
import { fanChart, pictureCells } from "./fanPicture";
import { doubtfulPoints } from "./doubtfulPoints";
import { ownCurve } from "./ownCurve";
import { ownFanChart, ownPictureCells } from "./ownPicture";
import { curveTrouble, isDuplicateFan, staticCurve } from "./staticCurve";
import { ventedHeat } from "./ventedHeat";

const CURVE_NOTE =
  "From the fan's data sheet, for standard air. Points in any order; blank rows are skipped. In the units of the first sheet.";
const KIND_NOTE =
  "static or total: which fan pressure the data sheet prints. Total pressure counts the velocity pressure at the fan's outlet in; static leaves it out.";
const OUTLET_NOTE =
  "Diameter of the fan's outlet, for total pressure alone. Of a rectangular outlet: of the circle with the same area.";
const USED_NOTE =
  "as printed or as read: which curve all sheets take. As read is what the readings further down make of it, with the printed one where nothing was read.";

/** The fan's curve, where it works on these ducts, and a picture of both. */
export const fanSheet: SheetOf<FanContents> = (frame, contents) => ({
  name: frame.sheet("fan"),
  columns: [
    23,
    12,
    9.5,
    10.5,
    12,
    58,
    8,
    11,
    12,
    4,
    ...fanCurveColumns.map(({ key }) => (key === "inWords" ? 80 : 11)),
  ],
  tallRows: [
    { row: CURVE_HEADER, lines: 4 },
    { row: THROTTLES, lines: 3 },
    { row: PICTURE + 1, lines: 2 },
    { row: DRAWN_OWN, lines: 2 },
  ],
  frozen: { rows: 0, columns: 0 },
  cells: [
    text("A1", "The fan", "title"),
    text(
      "A2",
      "Type its curve from the data sheet: fan pressure against airflow, in standard air, from shut to wide open.",
    ),
    text(
      "A3",
      "No curve? Ask for one: an airflow without its pressure says little. Two points at least, better eight.",
      "note",
    ),
    cautionLine(
      frame,
      "A4",
      "Never turn a wheel faster than its maker allows. Air blown outside can draw a flue's fumes back in.",
    ),
    text("A5", "The pressure printed is", "label"),
    input(KIND_CELL.replace(/\$/g, ""), "static", { note: KIND_NOTE }),
    formula("A6", headingIn(frame, "Fan outlet", "diameter"), "label"),
    input(OUTLET_CELL.replace(/\$/g, ""), null, { note: OUTLET_NOTE }),
    formula("A7", curveTrouble(frame), "total"),
    text("E6", "Used is", "label"),
    input(USED_CELL.replace(/\$/g, ""), USED.printed, { note: USED_NOTE }),
    text("E5", "It is from", "label"),
    input(SOURCE_CELL, contents.source, {
      note: "Data sheet, page and date, so that whoever reads this later can look.",
    }),
    formula(`A${CURVE_HEADER}`, headingIn(frame, "Airflow", "airflow"), "numberHeader", { note: CURVE_NOTE }),
    formula(`B${CURVE_HEADER}`, headingIn(frame, "Pressure printed", "pressure"), "numberHeader", {
      note: CURVE_NOTE,
    }),
    ...Array.from({ length: CURVE_LAST - CURVE_HEADER }, (_, index) => {
      const row = CURVE_HEADER + 1 + index;
      return [
        input(`A${row}`, contents.curve[index]?.[0] ?? null, { format: formatOf(frame, "airflow") }),
        input(`B${row}`, contents.curve[index]?.[1] ?? null, { format: frame.units === "SI" ? "#,##0" : "0.0" }),
      ];
    }).flat(),
    tableEnd(`A${CURVE_LAST + 1}`),
    ...staticCurve(frame),
    ...whereItWorks(frame),
    ...ownCurve(frame, contents),
    ...ventedHeat(frame),
    ...pictureCells(frame),
    doubtfulPoints(frame),
    ...ownPictureCells(frame),
  ],
  lists: [
    { range: KIND_CELL.replace(/\$/g, ""), choices: [...KINDS], strict: true },
    { range: USED_CELL.replace(/\$/g, ""), choices: Object.values(USED), strict: true },
  ],
  flags: [{ range: "A7", containsText: "Look:", style: "flag" }],
  charts: [fanChart, ownFanChart],
  print: { ...printing(frame, "portrait"), area: `A1:F${PICTURE - 1}` },
});

function whereItWorks(frame: Frame): SheetCell[] {
  const flow = (key: SolveKey): string =>
    `=IF(${isDuplicateFan(frame)},"see A7",${fromAnswer(FLOW_ANSWER, ofFan(FLOW_ANSWER, key, frame), frame).slice(1)})`;
  const asked = (key: BudgetKey): string => fromAnswer(BUDGET_ANSWER, ofFan(BUDGET_ANSWER, key, frame), frame);
  const airflow = { format: formatOf(frame, "airflow"), unit: unitOnly(frame, "airflow") };
  const pressure = { format: formatOf(frame, "pressure"), unit: unitOnly(frame, "pressure") };
  const askedAirflow = `$B$${POINT + 3}`;
  const shown = (cell: string): string => `ROUND(${cell},0)&" "&${unitWord(frame, "airflow")}`;
  const words = `"With the gates of ${frame.sheet("flow")} the fan moves "&${shown(POINT_AIRFLOW)}&"; with those of ${frame.sheet("runs")} the hoods ask for "&${shown(askedAirflow)}&"."`;
  return [
    text(`A${POINT}`, "Where it works", "section"),
    ...totals(`A${POINT + 1}`, 1, [
      { label: `Airflow, gates as on ${frame.sheet("flow")}`, code: flow("airflow"), ...airflow },
      { label: "Fan static pressure there", code: flow("staticSuction"), ...pressure },
      { label: "Airflow asked for", code: asked("airflow"), ...airflow },
      { label: "Pressure asked for", code: asked("pathLoss"), ...pressure },
    ]),
    formula(`A${POINT + 6}`, `=IF(AND(ISNUMBER(${POINT_AIRFLOW}),ISNUMBER(${askedAirflow})),${words},"")`, "total"),
  ];
}
