import { unitOf, type Quantity } from "../../../reference/quantities";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CURVE_HEADER, CURVE_LAST, CURVE_USED } from "../layout";
import { bySystem, formatOf, headingIn } from "../parts/units";
import { KIND_CELL, OUTLET_CELL } from "./fanLayout";

const STANDARD = "1.201384"; // kg/m3, 0.075 lb/ft3: the air of a printed curve

const inSI = (frame: Frame, quantity: Quantity): string =>
  bySystem(frame, twelveDigits(unitOf(quantity, "IP").factor), twelveDigits(unitOf(quantity, "SI").factor));

/** As many as every program gives back as they were written. */
function twelveDigits(value: number): string {
  return String(Number(value.toPrecision(12)));
}

/** Velocity pressure at the fan's outlet at the airflow of a row, in the unit of the printed pressure. */
function outletPressure(frame: Frame, row: number): string {
  const velocity = `(A${row}*${inSI(frame, "airflow")}/(PI()/4*(${OUTLET_CELL}*${inSI(frame, "diameter")})^2))`;
  return `${STANDARD}/2*${velocity}^2/${inSI(frame, "pressure")}`;
}

const isTotal = `LOWER(TRIM(${KIND_CELL}))="total"`;
const outletKnown = `IF(ISNUMBER(${OUTLET_CELL}),${OUTLET_CELL}>0,FALSE)`;

/** The curve as all sheets read it: airflow as typed, and fan static pressure, which is total pressure less that of the outlet's velocity. */
export function staticCurve(frame: Frame): SheetCell[] {
  const { airflow, pressure } = CURVE_USED;
  const note =
    "As all sheets read it. Static pressure: as typed; total pressure: less the velocity pressure at the fan's outlet.";
  const heads = [
    formula(`${airflow}${CURVE_HEADER}`, headingIn(frame, "Airflow", "airflow"), "numberHeader", { note }),
    formula(`${pressure}${CURVE_HEADER}`, headingIn(frame, "Fan static pressure", "pressure"), "numberHeader", {
      note,
    }),
  ];
  const rows = Array.from({ length: CURVE_LAST - CURVE_HEADER }, (_, index) => {
    const row = CURVE_HEADER + 1 + index;
    const typed = `B${row}`;
    const converted = `IF(${outletKnown},${typed}-${outletPressure(frame, row)},"")`;
    return [
      formula(`${airflow}${row}`, `=IF(ISBLANK(A${row}),"",A${row})`, "result", { format: formatOf(frame, "airflow") }),
      formula(`${pressure}${row}`, `=IF(ISBLANK(${typed}),"",IF(${isTotal},${converted},${typed}))`, "result", {
        format: formatOf(frame, "pressure"),
      }),
    ];
  });
  return [...heads, ...rows.flat()];
}

/** A sentence where the conversion lacks its outlet, or gives what no fan has. */
export function outletTrouble(frame: Frame): string {
  const used = `$${CURVE_USED.pressure}$${CURVE_HEADER + 1}:$${CURVE_USED.pressure}$${CURVE_LAST}`;
  const missing = `"Look: type the diameter of the fan's outlet, or the total pressure cannot be turned into static pressure."`;
  const negative = `"Look: less than nothing is left of some pressures. Is the outlet's diameter right, in "&${bySystem(frame, '"in"', '"mm"')}&", and is it total pressure?"`;
  return `=IF(${isTotal},IF(${outletKnown},IF(COUNTIF(${used},"<0")>0,${negative},""),${missing}),"")`;
}
