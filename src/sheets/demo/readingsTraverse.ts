import { formula, input, text } from "../cells";
import type { SheetCell } from "../workbook";
import { blockOf } from "./readingsBlock";
import { DUCT_CELL, inTraverse, POINTS_CELL, TRAVERSE, TRAVERSE_FIRST, TRAVERSE_LAST } from "./readingsLayout";
import { headingIn, unitWord } from "./readingsUnits";

/** Invented readings [fpm] of a 6 in duct along two lines at right angles, slower by the wall. */
const READINGS: readonly (readonly [number, number])[] = [
  [2650, 2710],
  [3060, 3080],
  [3320, 3350],
  [3290, 3260],
  [3010, 2980],
  [2600, 2560],
];

const POINTS_NOTE =
  "4, 6, 8 or 10 on a line across a round duct. Blank: the number that is usual for the duct's size. Then read as many.";
const ERROR_NOTE =
  "Of a vane meter and a tape, as the tables have them, from memory; DUCT.AIRFLOWERROR takes your own meter's figures.";

/** Depths for the probe, a reading beside each, and the airflow that they mean. */
export function traverse(): SheetCell[] {
  const [first, last] = [TRAVERSE_FIRST, TRAVERSE_LAST];
  const depths = `=DUCT.TRAVERSEPOINTS(${DUCT_CELL},${POINTS_CELL},,units)`;
  const cells: SheetCell[] = [
    text(`A${TRAVERSE - 3}`, "1. A duct traverse", "section"),
    text(
      `D${TRAVERSE - 3}`,
      "Hold the probe at each depth, along two lines at right angles, far from any bend.",
      "note",
    ),
    text(`A${TRAVERSE - 2}`, "Duct, across", "label"),
    input(DUCT_CELL, 6),
    formula(`C${TRAVERSE - 2}`, `=${unitWord("diameter")}`, "unit"),
    text(`A${TRAVERSE - 1}`, "Points on a line", "label"),
    input(POINTS_CELL, 6, { note: POINTS_NOTE }),
    formula(`A${TRAVERSE}`, headingIn("Depth from the wall", "diameter"), "numberHeader"),
    formula(`B${TRAVERSE}`, headingIn("Across", "velocity"), "numberHeader"),
    formula(`C${TRAVERSE}`, headingIn("Up and down", "velocity"), "numberHeader"),
    ...blockOf(inTraverse("A"), "0.00", depths),
    ...results(),
    text(`E${last - 1}`, `Depths: ${depths}`, "note"),
    text(`E${last}`, `Mean: ${meanVelocity}, not of pressures but of velocities`, "note"),
  ];
  for (let at = first; at <= last; at++) {
    const pair = READINGS[at - first];
    cells.push(input(`B${at}`, pair?.[0] ?? null), input(`C${at}`, pair?.[1] ?? null));
  }
  return cells;
}

const meanVelocity = `=DUCT.TRAVERSE(${inTraverse("B:C").replaceAll("$", "")},,,units)`;

/** Labels of column E run over two empty cells. */
function results(): SheetCell[] {
  const [mean, airflow, error, count] = [0, 1, 2, 3].map((line) => `H${TRAVERSE_FIRST + line}`) as [
    string,
    string,
    string,
    string,
  ];
  const row = (cell: string): number => Number(cell.slice(1));
  const wanted = `2*COUNT(${inTraverse("A")})`;
  const missing = `${wanted}-${count}`;
  const whole = { format: "#,##0" };
  return [
    text(`E${row(mean)}`, "Mean velocity", "label"),
    formula(mean, meanVelocity, "result", whole),
    formula(`I${row(mean)}`, `=${unitWord("velocity")}`, "unit"),
    text(`E${row(airflow)}`, "Airflow", "label"),
    formula(airflow, `=DUCT.AIRFLOW(${mean},${DUCT_CELL},,units)`, "total", whole),
    formula(`I${row(airflow)}`, `=${unitWord("airflow")}`, "unit"),
    text(`E${row(error)}`, "Plus or minus", "label", { note: ERROR_NOTE }),
    formula(error, `=DUCT.AIRFLOWERROR(${mean},${DUCT_CELL},,,,units)`, "total", {
      format: '"± "#,##0',
      note: ERROR_NOTE,
    }),
    formula(`I${row(error)}`, `=${unitWord("airflow")}`, "unit"),
    text(`E${row(count)}`, "Readings taken", "label"),
    formula(count, `=COUNT(${inTraverse("B:C")})`, "result", { format: "0" }),
    formula(
      `E${row(count) + 2}`,
      `=IF(${missing}=0,"Every point is read on both lines.",IF(${missing}>0,${missing}&" readings are missing: two at each depth.","More readings than depths: clear those beside no depth."))`,
      "total",
    ),
  ];
}
