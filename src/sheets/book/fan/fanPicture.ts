import { quantities, type Quantity } from "../../../reference/quantities";
import { formula, text } from "../../cells";
import type { Chart, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CURVE_HEADER, CURVE_LAST, CURVE_USED } from "../layout";
import { bySystem, formatOf, headingIn } from "../parts/units";
import {
  CURVE_POINTS,
  PICTURE,
  PICTURE_CURVE,
  PICTURE_POINT,
  PICTURE_SYSTEM,
  POINT,
  POINT_AIRFLOW,
  POINT_PRESSURE,
  SYSTEM_POINTS,
} from "./fanLayout";

/** With its header, so that a point in a row inserted right below it is drawn, too. */
const ofCurve = (letter: string): string => `$${letter}$${CURVE_HEADER}:$${letter}$${CURVE_LAST}`;
const AIRFLOWS = ofCurve(CURVE_USED.airflow);
const PRESSURES = ofCurve(CURVE_USED.pressure);

/** How much of its printed pressure the fan makes in this air. Standard air is 0.075 lb/ft³, which is 1.2014 kg/m³. */
const thickness = (frame: Frame): string => `${frame.name("density")}/${bySystem(frame, "0.075", "1.20138")}`;

/** What stands for an x that is not known: the curve's last. One text among them, and a chart counts 1, 2, 3 in place of them all. */
const LAST_AIRFLOW = `IF(COUNT(${AIRFLOWS})=0,"",MAX(${AIRFLOWS}))`;
/** What stands for a y that is not known: a chart draws a text as 0, and this not at all. */
const NO_POINT = `IF(COUNT(${AIRFLOWS})=0,"",NA())`;

/**
 * The cells that the picture is drawn from. Every x is a number as soon as there is a curve: where it has fewer points than
 * rows, its last one is repeated, which draws nothing more.
 */
export function pictureCells(frame: Frame): SheetCell[] {
  const [airflow, pressure] = [{ format: formatOf(frame, "airflow") }, { format: formatOf(frame, "pressure") }];
  const cells: SheetCell[] = [
    text(`A${PICTURE}`, "Behind the picture", "section"),
    text(
      `D${PICTURE}`,
      "The fan's curve in your air, and the system's square law through the point where both meet.",
      "note",
    ),
    formula(`A${PICTURE + 1}`, headingIn(frame, "Airflow", "airflow"), "numberHeader"),
    ...["Fan curve", "System", "Works here"].map((words, index) =>
      formula(`${"BCD"[index]!}${PICTURE + 1}`, headingIn(frame, words, "pressure"), "numberHeader"),
    ),
  ];
  for (let k = 1; k <= CURVE_POINTS; k++) {
    const at = PICTURE_CURVE + k - 1;
    cells.push(
      formula(`A${at}`, `=IFERROR(SMALL(${AIRFLOWS},MIN(${k},COUNT(${AIRFLOWS}))),"")`, "result", airflow),
      formula(
        `B${at}`,
        `=IFERROR(INDEX(${PRESSURES},MATCH(A${at},${AIRFLOWS},0))*${thickness(frame)},"")`,
        "result",
        pressure,
      ),
    );
  }
  const reach = `MIN(MAX(${AIRFLOWS}),${POINT_AIRFLOW}*SQRT(MAX(${PRESSURES})/${POINT_PRESSURE}))`;
  for (let k = 0; k < SYSTEM_POINTS; k++) {
    const at = PICTURE_SYSTEM + k;
    cells.push(
      formula(`A${at}`, `=IFERROR(${k}/${SYSTEM_POINTS - 1}*${reach},${LAST_AIRFLOW})`, "result", airflow),
      formula(`C${at}`, `=IFERROR(${POINT_PRESSURE}*(A${at}/${POINT_AIRFLOW})^2,${NO_POINT})`, "result", pressure),
    );
  }
  cells.push(
    formula(`A${PICTURE_POINT}`, `=IF(ISNUMBER(${POINT_AIRFLOW}),${POINT_AIRFLOW},${LAST_AIRFLOW})`, "result", airflow),
    formula(`D${PICTURE_POINT}`, `=IF(ISNUMBER(${POINT_PRESSURE}),${POINT_PRESSURE},${NO_POINT})`, "result", pressure),
  );
  return cells;
}

const both = (quantity: Quantity): string => `${quantities[quantity].IP.label} (SI: ${quantities[quantity].SI.label})`;
const series = (letter: string): string => `${letter}${PICTURE_CURVE}:${letter}${PICTURE_POINT}`;

/** A chart's titles cannot follow a cell, so they name both units. */
export const fanChart: Chart = {
  kind: "line through points",
  over: `F${CURVE_HEADER - 1}:F${POINT - 1}`,
  title: "Fan against system",
  x: { title: `Airflow, ${both("airflow")}`, range: series("A") },
  y: {
    title: `Fan static pressure, ${both("pressure")}`,
    series: [
      { name: "works here", range: series("D"), ink: "#b4491f" }, // first, so that it lies on top
      { name: "fan in your air", range: series("B"), ink: "#3f5f5c" },
      { name: "system", range: series("C"), ink: "#8a6d1f" },
    ],
  },
};
