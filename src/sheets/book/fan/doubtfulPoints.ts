import { RISES_AGAIN, WORKSHOP_FAN } from "../../../reference/plausible";
import type { Quantity } from "../../../reference/quantities";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CURVE_HEADER, CURVE_LAST, CURVE_USED } from "../layout";
import { LOOK } from "../parts/look";
import { inBook, rounded, unitWord } from "../parts/units";
import { CURVE_POINTS, PICTURE_CURVE, POINTS_CELL } from "./fanLayout";
import { firstRow } from "./firstRow";

/*
 * What is doubtful in points that are all sound: those that a shorter curve leaves of a longer one that stood there, which are read with the new ones,
 * since points may stand in any order; and a curve in other units.
 */

const used = (letter: string): string => `$${letter}$${CURVE_HEADER}:$${letter}$${CURVE_LAST}`;
const [AIRFLOWS, PRESSURES] = [used(CURVE_USED.airflow), used(CURVE_USED.pressure)];

/** The picture's points stand in order; its last one is repeated. */
const sorted = (letter: string, from: 0 | 1): string =>
  `$${letter}$${PICTURE_CURVE + from}:$${letter}$${PICTURE_CURVE + CURVE_POINTS - 2 + from}`;
const [airflow, pressure, nextAirflow, next] = [sorted("A", 0), sorted("B", 0), sorted("A", 1), sorted("B", 1)];
const all = `$B$${PICTURE_CURVE}:$B$${PICTURE_CURVE + CURVE_POINTS - 1}`;

const rises = `(${next}-${pressure}>${RISES_AGAIN.step}*MAX(${all}))*(${pressure}<${RISES_AGAIN.below}*$B$${PICTURE_CURVE})`;

/** What is beyond the curve of a fan that pulls dust, in words; an empty text where nothing is. */
function otherUnits(frame: Frame): string {
  const { leastPressure, mostPressure, turbinePressure, turbineAirflow, leastAirflow } = WORKSHOP_FAN;
  const limit = (value: number, quantity: Quantity): string => inBook(frame, value, quantity);
  const [mostAir, greatest] = [`MAX(${AIRFLOWS})`, `MAX(${PRESSURES})`];
  const most = `IF(${mostAir}>${limit(turbineAirflow, "airflow")},${limit(mostPressure, "pressure")},${limit(turbinePressure, "pressure")})`;
  const said = (value: string, quantity: Quantity): string =>
    `"${LOOK} at most "&${value}&" "&${unitWord(frame, quantity)}&" is no duct fan's: is it in other units?"`;
  const ofPressure = said(rounded(frame, greatest, { IP: 2, SI: 0 }), "pressure");
  const ofAir = said(`ROUND(${mostAir},0)`, "airflow");
  return `IF(OR(${greatest}<${limit(leastPressure, "pressure")},${greatest}>${most}),${ofPressure},IF(${mostAir}<${limit(leastAirflow, "airflow")},${ofAir},""))`;
}

/** A sentence where a pressure rises again that had fallen, or the curve is no duct fan's; else how many points are read, so that a point too many shows. */
export function doubtfulPoints(frame: Frame): SheetCell {
  const shown = (value: string): string => `ROUND(${value},0)&" "&${unitWord(frame, "airflow")}`;
  const at = shown(`INDEX(${nextAirflow},${firstRow(rises, airflow)}-ROW($A$${PICTURE_CURVE})+1)`);
  const again = `"${LOOK} pressure rises again at "&${at}&": an older point?"`;
  const read = `COUNT(${AIRFLOWS})&" points are read, up to "&${shown(`MAX(${AIRFLOWS})`)}`;
  const far = `IF(COUNT(${AIRFLOWS})<2,"",${otherUnits(frame)})`;
  const words = `=IF(COUNT(${AIRFLOWS})=0,"",IFERROR(IF(SUMPRODUCT(${rises})>0,${again},IF(${far}="",${read},${far})),""))`;
  return formula(POINTS_CELL.replaceAll("$", ""), words, "note");
}
