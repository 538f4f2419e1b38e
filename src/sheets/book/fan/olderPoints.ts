import { RISES_AGAIN } from "../../../reference/plausible";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CURVE_HEADER, CURVE_LAST, CURVE_USED } from "../layout";
import { LOOK } from "../parts/look";
import { unitWord } from "../parts/units";
import { CURVE_POINTS, PICTURE_CURVE, POINTS_CELL } from "./fanLayout";
import { firstRow } from "./firstRow";

/** What a shorter curve leaves of a longer one that stood there: it is read with the new one, since points may stand in any order. */

const AIRFLOWS = `$${CURVE_USED.airflow}$${CURVE_HEADER}:$${CURVE_USED.airflow}$${CURVE_LAST}`;

/** The picture's points stand in order; its last one is repeated. */
const sorted = (letter: string, from: 0 | 1): string =>
  `$${letter}$${PICTURE_CURVE + from}:$${letter}$${PICTURE_CURVE + CURVE_POINTS - 2 + from}`;
const [airflow, pressure, nextAirflow, next] = [sorted("A", 0), sorted("B", 0), sorted("A", 1), sorted("B", 1)];
const all = `$B$${PICTURE_CURVE}:$B$${PICTURE_CURVE + CURVE_POINTS - 1}`;

const rises = `(${next}-${pressure}>${RISES_AGAIN.step}*MAX(${all}))*(${pressure}<${RISES_AGAIN.below}*$B$${PICTURE_CURVE})`;

/** A sentence where a pressure rises again that had fallen; else how many points are read, so that a point too many shows. */
export function olderPoints(frame: Frame): SheetCell {
  const shown = (value: string): string => `ROUND(${value},0)&" "&${unitWord(frame, "airflow")}`;
  const at = shown(`INDEX(${nextAirflow},${firstRow(rises, airflow)}-ROW($A$${PICTURE_CURVE})+1)`);
  const again = `"${LOOK} pressure rises again at "&${at}&": an older point?"`;
  const read = `COUNT(${AIRFLOWS})&" points are read, up to "&${shown(`MAX(${AIRFLOWS})`)}`;
  const words = `=IF(COUNT(${AIRFLOWS})=0,"",IFERROR(IF(SUMPRODUCT(${rises})>0,${again},${read}),""))`;
  return formula(POINTS_CELL.replaceAll("$", ""), words, "note");
}
