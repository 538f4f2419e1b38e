import { formula, text } from "../../cells";
import { NONE } from "../../../reference/zeroWords";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { formatOf, unitOnly } from "../parts/units";
import { bySystem } from "../parts/units";
import {
  AIRFLOW_CELL,
  AREA_CELL,
  DUCT_CELL,
  ERROR_CELL,
  FLOOR_CELL,
  inTraverse,
  KIND_CELL,
  LAST_ROW,
  MEAN_CELL,
  PERCENT_CELL,
  plain,
  RESULTS,
} from "./layout";
import { ductIsSound } from "./traverse";

const ERROR_NOTE =
  "Of the meter and of a tape that is 1 mm off, root sum of squares. It says nothing of a bad place to read.";

/** Mean velocity, airflow and its plus or minus; blank until the readings are sound. */
export function results(frame: Frame): SheetCell[] {
  const [units, density] = [frame.name("units"), frame.name("density")];
  const readings = inTraverse("B:C");
  const wrong = `COUNTIF(${inTraverse("D")},"check it*")>0`;
  const mean = `DUCT.TRAVERSE(${plain(inTraverse("K:L"))},${KIND_CELL},${density},${units})`;
  const percent = errorAsNumber(PERCENT_CELL, "3");
  const floor = errorAsNumber(FLOOR_CELL, bySystem(frame, "39.37", "0.2"));
  const known = (code: string): string => `=IF(COUNT(${MEAN_CELL})=0,"",${code})`;
  const area = `DUCT.AREA(${DUCT_CELL},,${units})`;
  const hours = bySystem(frame, "1", "3600");
  const airflow = `${MEAN_CELL}*${AREA_CELL}*${hours}`;
  const tape = `2*${MEAN_CELL}*${bySystem(frame, "1/25.4", "1")}/${DUCT_CELL}`;
  const squares = `(${percent}/100*${MEAN_CELL})^2+${floor}^2+(${tape})^2`;
  const error = `${AREA_CELL}*${hours}*SQRT(${squares})`;
  const whole = { format: formatOf(frame, "airflow") };
  return [
    text(`A${RESULTS}`, "What the duct carries", "section"),
    text(`A${RESULTS + 1}`, "Mean velocity", "label"),
    formula(
      plain(MEAN_CELL),
      `=IF(OR(${wrong},NOT(${ductIsSound(frame)}),COUNT(${readings})=0,MAX(${readings})=0),"",${mean})`,
      "result",
      { format: formatOf(frame, "velocity") },
    ),
    formula(`C${RESULTS + 1}`, unitOnly(frame, "velocity"), "unit"),
    text(`A${RESULTS + 2}`, "Airflow", "label"),
    formula(plain(AIRFLOW_CELL), known(airflow), "total", whole),
    formula(`C${RESULTS + 2}`, unitOnly(frame, "airflow"), "unit"),
    text(`A${RESULTS + 3}`, "Plus or minus", "label", { note: ERROR_NOTE }),
    formula(plain(ERROR_CELL), known(soundErrors(percent, floor, error)), "total", {
      format: '"± "#,##0',
      note: ERROR_NOTE,
    }),
    formula(`C${RESULTS + 3}`, unitOnly(frame, "airflow"), "unit"),
    text(`A${RESULTS + 4}`, "Area of the duct", "label"),
    formula(plain(AREA_CELL), `=IF(${ductIsSound(frame)},${area},"")`, "result", {
      format: frame.units === "SI" ? "0.00000" : "0.0000",
    }),
    formula(`C${RESULTS + 4}`, unitOnly(frame, "area"), "unit"),
    formula(`D${RESULTS + 1}`, `=${progress(wrong)}`, "total"),
    text(`A${RESULTS + 5}`, `Mean: =${mean}`, "note"),
    text(`A${RESULTS + 6}`, `Area: =${area}`, "note"),
    text(
      `A${RESULTS + 7}`,
      "Airflow: mean velocity times the area. Plus or minus: root sum of squares, as AIRFLOWERROR has it.",
      "note",
    ),
    text(
      `A${LAST_ROW}`,
      "Fully developed flow is assumed: the next bend, branch or gate upstream should be eight or more diameters away (common practice, no source).",
      "note",
    ),
  ];
}

/** An error of the meter as a number. */
const errorAsNumber = (cell: string, usual: string): string =>
  `IF(${cell}="",${usual},IF(${cell}="${NONE[0]!}",0,${cell}))`;

/** A plus or minus, or what is wrong with the meter's errors. */
function soundErrors(percent: string, floor: string, error: string): string {
  const wrong = (cell: string, must: string): string => `"check it: ${plain(cell)} must be ${must}"`;
  const isPercent = `IF(ISNUMBER(${percent}),AND(${percent}>=0,${percent}<=100),FALSE)`;
  const isFloor = `IF(ISNUMBER(${floor}),${floor}>=0,FALSE)`;
  return `IF(${isPercent},IF(${isFloor},${error},${wrong(FLOOR_CELL, "a number, at least 0")}),${wrong(PERCENT_CELL, "a number, 0 to 100")})`;
}

function progress(wrong: string): string {
  const missing = `(2*COUNT(${inTraverse("A")})-COUNT(${inTraverse("B:C")}))`;
  const counted = `IF(COUNT(${inTraverse("A")})=0,"",IF(${missing}=0,"Every point is read on both lines.",IF(${missing}<0,"Not read: what stands in a row without a depth. Clear it.",${missing}&" readings are missing: two at each depth.")))`;
  return `IF(${wrong},"No mean until the marked readings are put right.",${counted})`;
}
