import { fanCurveColumns } from "../../../reference/answerColumns";
import type { Answer } from "../parts/answerReferences";
import { CURVE_HEADER, CURVE_LAST } from "../layout";

/** Where things stand on the sheet Fan below its curve. */
export const SOURCE_CELL = "F5";
export const KIND_CELL = "$B$5"; // which pressure the data sheet prints
export const KINDS = ["static", "total"] as const;
export const OUTLET_CELL = "$B$6"; // diameter of the fan's outlet
export const POINT = CURVE_LAST + 2; // row of the heading of where the fan works
export const POINT_AIRFLOW = `$B$${POINT + 1}`;
export const POINT_PRESSURE = `$B$${POINT + 2}`;

/** Which curve all sheets read, and the printed one as static pressure beside the picture, where FANCURVE takes it from. */
export const USED_CELL = "$F$6";
export const USED = { printed: "as printed", read: "as read" } as const;
export const PRINTED = { airflow: "H", pressure: "I" } as const;

/** What the owner read at the fan with the duct throttled, and the curve that it makes. */
export const OWN = POINT + 8; // row of its title
export const OWN_DIAMETER = `$B$${OWN + 2}`;
export const OWN_SAYS = `A${OWN + 3}`;
export const THROTTLES = OWN + 5; // row of the header
export const THROTTLES_LAST = THROTTLES + 12;
export const OWN_ANSWER = {
  sheet: "fan",
  column: 11, // K
  header: THROTTLES,
  last: THROTTLES + 15,
  columns: fanCurveColumns,
} as const satisfies Answer;
export const OWN_PICTURE = THROTTLES_LAST + 2; // the rows that it covers
export const OWN_PICTURE_LAST = OWN_PICTURE + 16;

/** The heat that goes with air that is blown outdoors. */
export const HEAT = OWN_PICTURE_LAST + 2; // row of its title

/** What the picture is drawn from: the curve's points in order, then the system's, then the point where both meet. */
export const PICTURE = HEAT + 11; // row of the heading
export const PICTURE_CURVE = PICTURE + 2;
export const CURVE_POINTS = CURVE_LAST - CURVE_HEADER;
export const POINTS_CELL = `$E$${PICTURE_CURVE}`; // what is said of the points read
export const PICTURE_SYSTEM = PICTURE_CURVE + CURVE_POINTS;
export const SYSTEM_POINTS = 16;
export const PICTURE_POINT = PICTURE_SYSTEM + SYSTEM_POINTS;

/** Likewise for the picture of the owner's own fan: its curve, then the printed one. */
export const DRAWN_OWN = PICTURE_POINT + 4; // row of the header
