import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { formatOf, unitOnly } from "../parts/units";
import { bySystem } from "../parts/units";
import { errorOf } from "../parts/zeros";
import {
  AIRFLOW_CELL,
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
  const percent = errorOf(PERCENT_CELL, "3");
  const floor = errorOf(FLOOR_CELL, bySystem(frame, "39.37", "0.2"));
  const known = (code: string): string => `=IF(COUNT(${MEAN_CELL})=0,"",${code})`;
  const airflow = `DUCT.AIRFLOW(${MEAN_CELL},${DUCT_CELL},,${units})`;
  const error = `DUCT.AIRFLOWERROR(${MEAN_CELL},${DUCT_CELL},${percent},${floor},,${units})`;
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
    formula(plain(ERROR_CELL), known(error), "total", { format: '"± "#,##0', note: ERROR_NOTE }),
    formula(`C${RESULTS + 3}`, unitOnly(frame, "airflow"), "unit"),
    formula(`D${RESULTS + 1}`, `=${progress(wrong)}`, "total"),
    text(`A${RESULTS + 5}`, `Mean: =${mean}`, "note"),
    text(`A${RESULTS + 6}`, `Airflow: =${airflow}`, "note"),
    text(`A${RESULTS + 7}`, `Plus or minus: =${error}`, "note"),
    text(
      `A${LAST_ROW}`,
      "Fully developed flow is assumed: the next bend, branch or gate upstream should be eight or more diameters away (common practice, no source).",
      "note",
    ),
  ];
}

function progress(wrong: string): string {
  const missing = `(2*COUNT(${inTraverse("A")})-COUNT(${inTraverse("B:C")}))`;
  const counted = `IF(COUNT(${inTraverse("A")})=0,"",IF(${missing}=0,"Every point is read on both lines.",${missing}&" readings are missing: two at each depth."))`;
  return `IF(${wrong},"No mean until the marked readings are put right.",${counted})`;
}
