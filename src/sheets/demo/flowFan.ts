import { formula, input, text } from "../cells";
import type { Chart, SheetCell } from "../workbook";
import { atFan, CURVE, CURVE_LAST, inFlowUnit, POINT } from "./flowLayout";

/** An invented fan: airflow [cfm] and fan static pressure [in.w.g.]. A little weak for what the shed's hoods ask for. */
export const inventedCurve: readonly (readonly [number, number])[] = [
  [0, 11.2],
  [400, 11],
  [800, 10.5],
  [1200, 9.6],
  [1600, 8.2],
  [1800, 7.3],
  [2000, 6.2],
  [2200, 4.9],
  [2400, 3.2],
];

const CURVE_NOTE =
  "From the fan's data sheet, for standard air. Points in any order; blank rows are skipped. In the units of the units cell.";

/** The fan's curve with the point at which it works, which the chart shows. */
export function fan(): SheetCell[] {
  const pressure = 'IF(units="SI","Pa","in.w.g.")';
  const cells: SheetCell[] = [
    text(`A${CURVE - 2}`, "The fan", "section"),
    text(`A${CURVE - 1}`, "Invented: type the points of your own.", "note"),
    formula(`A${CURVE}`, inFlowUnit("Airflow"), "numberHeader", { note: CURVE_NOTE }),
    formula(`B${CURVE}`, `="Fan static pressure ("&${pressure}&")"`, "numberHeader", { note: CURVE_NOTE }),
    formula(`A${POINT}`, `=IFERROR(${atFan("C")},"")`, "total", { format: "#,##0" }),
    formula(`B${POINT}`, `=IF(A${POINT}="","","works here, at")`, "label"),
    formula(`C${POINT}`, `=IFERROR(${atFan("E")},"")`, "total", { format: "0.00" }),
  ];
  for (let at = CURVE + 1; at <= CURVE_LAST; at++) {
    const point = inventedCurve[at - CURVE - 1];
    cells.push(input(`A${at}`, point?.[0] ?? null, { format: "#,##0" }));
    cells.push(input(`B${at}`, point?.[1] ?? null, { format: "0.0" }));
  }
  return cells;
}

export const fanChart: Chart = {
  kind: "line through points",
  over: `D${CURVE - 2}:K${POINT}`,
  title: "Where the fan works",
  x: { title: "Airflow, cfm (SI: m³/h)", range: `A${CURVE + 1}:A${POINT}` },
  y: {
    title: "Fan static pressure, in.w.g. (SI: Pa)",
    series: [
      { name: "works here", range: `C${CURVE + 1}:C${POINT}`, ink: "#b4491f" }, // first, so that it lies on top
      { name: "fan curve", range: `B${CURVE + 1}:B${POINT}`, ink: "#3f5f5c" },
    ],
  },
};
