import { quantities } from "../../../reference/quantities";
import { formula, text } from "../../cells";
import type { Chart, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CURVE_HEADER } from "../layout";
import { answerColumn } from "../parts/answerReferences";
import { formatOf, headingIn } from "../parts/units";
import { CURVE_POINTS, DRAWN_OWN, OWN_ANSWER, OWN_PICTURE, OWN_PICTURE_LAST, PRINTED } from "./fanLayout";

const FLOWS = answerColumn(OWN_ANSWER, "airflow");
const COUNT = `COUNT(${FLOWS})`;
const PRINTED_FROM = DRAWN_OWN + 1 + CURVE_POINTS;
const LAST = PRINTED_FROM + CURVE_POINTS - 1;

/** The cells that the picture of the owner's fan is drawn from. As soon as there is a curve all are numbers: its last point is repeated. */
export function ownPictureCells(frame: Frame): SheetCell[] {
  const [airflow, pressure] = [{ format: formatOf(frame, "airflow") }, { format: formatOf(frame, "pressure") }];
  const cells: SheetCell[] = [
    text(`A${DRAWN_OWN - 1}`, "Behind the picture of your own fan, in standard air", "section"),
    formula(`A${DRAWN_OWN}`, headingIn(frame, "Airflow", "airflow"), "numberHeader"),
    ...["As read", "More by ±", "Less by ±", "As printed"].map((words, index) =>
      formula(`${"BCDE"[index]!}${DRAWN_OWN}`, headingIn(frame, words, "pressure"), "numberHeader"),
    ),
  ];
  const of = (key: "airflow" | "pressure" | "error", k: number): string =>
    `INDEX(${answerColumn(OWN_ANSWER, key)},MIN(${k},${COUNT}))`;
  for (let k = 1; k <= CURVE_POINTS; k++) {
    const at = DRAWN_OWN + k;
    const known = (code: string): string => `=IF(${COUNT}=0,"",${code})`;
    cells.push(
      formula(`A${at}`, known(of("airflow", k)), "result", airflow),
      formula(`B${at}`, known(of("pressure", k)), "result", pressure),
      formula(`C${at}`, known(`${of("pressure", k)}+${of("error", k)}`), "result", pressure),
      formula(`D${at}`, known(`MAX(0,${of("pressure", k)}-${of("error", k)})`), "result", pressure),
    );
    const there = PRINTED_FROM + k - 1;
    const [typed, printed] = [`$${PRINTED.airflow}${CURVE_HEADER + k}`, `$${PRINTED.pressure}${CURVE_HEADER + k}`];
    const above = k === 1 ? [of("airflow", 1), of("pressure", 1)] : [`A${there - 1}`, `E${there - 1}`];
    const drawn = (code: string, before: string): string =>
      `=IF(${COUNT}=0,"",IF(AND(ISNUMBER(${typed}),ISNUMBER(${printed})),${code},${before}))`;
    cells.push(
      formula(`A${there}`, drawn(typed, above[0]!), "result", airflow),
      formula(`E${there}`, drawn(printed, above[1]!), "result", pressure),
    );
  }
  return cells;
}

const series = (letter: string): string => `${letter}${DRAWN_OWN + 1}:${letter}${LAST}`;

export const ownFanChart: Chart = {
  kind: "line through points",
  over: `A${OWN_PICTURE}:F${OWN_PICTURE_LAST}`,
  title: "Your own fan, with its ±",
  x: { title: `Airflow, ${quantities.airflow.IP.label} (SI: ${quantities.airflow.SI.label})`, range: series("A") },
  y: {
    title: `Fan static pressure, ${quantities.pressure.IP.label} (SI: ${quantities.pressure.SI.label})`,
    series: [
      { name: "as read", range: series("B"), ink: "#b4491f" },
      { name: "more by ±", range: series("C"), ink: "#d9a48f" },
      { name: "less by ±", range: series("D"), ink: "#d9a48f" },
      { name: "as printed", range: series("E"), ink: "#3f5f5c" },
    ],
  },
};
