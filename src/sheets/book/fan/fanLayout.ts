import { CURVE_HEADER, CURVE_LAST } from "../layout";

/** Where things stand on the sheet Fan below its curve. */
export const SOURCE_CELL = "F5";
export const KIND_CELL = "$B$5"; // static or total: which pressure the data sheet prints
export const OUTLET_CELL = "$B$6"; // diameter of the fan's outlet
export const POINT = CURVE_LAST + 2; // row of the heading of where the fan works
export const POINT_AIRFLOW = `$B$${POINT + 1}`;
export const POINT_PRESSURE = `$B$${POINT + 2}`;

/** What the picture is drawn from: the curve's points in order, then the system's, then the point where both meet. */
export const PICTURE = POINT + 9; // row of the heading
export const PICTURE_CURVE = PICTURE + 2;
export const CURVE_POINTS = CURVE_LAST - CURVE_HEADER;
export const PICTURE_SYSTEM = PICTURE_CURVE + CURVE_POINTS;
export const SYSTEM_POINTS = 16;
export const PICTURE_POINT = PICTURE_SYSTEM + SYSTEM_POINTS;
