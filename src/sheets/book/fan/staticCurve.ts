import { unitOf, type Quantity } from "../../../reference/quantities";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { CURVE_HEADER, CURVE_LAST, CURVE_USED } from "../layout";
import { NAMES } from "../flow/flowLayout";
import { aboveHeadings } from "../parts/aboveHeadings";
import { thisRow } from "../parts/block";
import { duplicated, heldAt, isDuplicate } from "../parts/duplicated";
import { bySystem, formatOf, headingIn } from "../parts/units";
import { answerCell, answerColumn } from "../parts/answerReferences";
import { firstRow } from "./firstRow";
import {
  KIND_CELL,
  KINDS,
  OUTLET_CELL,
  OWN,
  OWN_ANSWER,
  POINTS_CELL,
  PRINTED,
  THROTTLES,
  USED,
  USED_CELL,
} from "./fanLayout";

const STANDARD = "1.201384"; // kg/m3, 0.075 lb/ft3: the air of a printed curve

const inSI = (frame: Frame, quantity: Quantity): string =>
  bySystem(frame, twelveDigits(unitOf(quantity, "IP").factor), twelveDigits(unitOf(quantity, "SI").factor));

/** As many as every program gives back as they were written. */
function twelveDigits(value: number): string {
  return String(Number(value.toPrecision(12)));
}

const typed = (letter: string): string => thisRow(letter, CURVE_HEADER, CURVE_LAST);

/** Velocity pressure at the fan's outlet at the airflow of a row, in the unit of the printed pressure. */
function outletPressure(frame: Frame): string {
  const velocity = `(${typed("A")}*${inSI(frame, "airflow")}/(PI()/4*(${OUTLET_CELL}*${inSI(frame, "diameter")})^2))`;
  return `${STANDARD}/2*${velocity}^2/${inSI(frame, "pressure")}`;
}

/** Whether all sheets take what the owner read. */
export const isAsRead = `LOWER(TRIM(${USED_CELL}))="${USED.read}"`;

const isTotal = `LOWER(TRIM(${KIND_CELL}))="total"`;
const outletKnown = `IF(ISNUMBER(${OUTLET_CELL}),${OUTLET_CELL}>0,FALSE)`;

/**
 * The curve as all sheets read it: the printed one, or the owner's own; and the printed one beside the picture, its airflow as typed and its fan
 * static pressure, which is total pressure less that of the outlet's velocity.
 */
export function staticCurve(frame: Frame): SheetCell[] {
  const { airflow, pressure } = CURVE_USED;
  const note = `As all sheets read it: as printed or as read, by ${USED_CELL.replaceAll("$", "")}. Static pressure: as typed; total pressure: less the velocity pressure at the fan's outlet.`;
  const heads = [
    formula(`${airflow}${CURVE_HEADER}`, headingIn(frame, "Airflow", "airflow"), "numberHeader", { note }),
    formula(`${pressure}${CURVE_HEADER}`, headingIn(frame, "Fan static pressure", "pressure"), "numberHeader", {
      note,
    }),
    formula(`${PRINTED.airflow}${CURVE_HEADER}`, headingIn(frame, "Airflow printed", "airflow"), "numberHeader"),
    formula(
      `${PRINTED.pressure}${CURVE_HEADER}`,
      headingIn(frame, "Static pressure printed", "pressure"),
      "numberHeader",
    ),
  ];
  const rows = Array.from({ length: CURVE_LAST - CURVE_HEADER }, (_, index) => {
    const row = CURVE_HEADER + 1 + index;
    const converted = `IF(${outletKnown},${typed("B")}-${outletPressure(frame)},"")`;
    const answer = THROTTLES + row - CURVE_HEADER;
    const used = (of: keyof typeof CURVE_USED, quantity: "airflow" | "pressure"): SheetCell => {
      const own = answerCell(OWN_ANSWER, of, answer);
      const printed = `$${PRINTED[of]}${row}`;
      return formula(
        `${CURVE_USED[of]}${row}`,
        `=IF(${isAsRead},IF(ISNUMBER(${own}),${own},""),${printed})`,
        "result",
        {
          format: formatOf(frame, quantity),
        },
      );
    };
    return [
      used("airflow", "airflow"),
      used("pressure", "pressure"),
      formula(`${PRINTED.airflow}${row}`, `=IF(ISBLANK(${typed("A")}),"",${typed("A")})`, "result", {
        format: formatOf(frame, "airflow"),
      }),
      formula(
        `${PRINTED.pressure}${row}`,
        `=IF(ISBLANK(${typed("B")}),"",IF(${isTotal},${converted},${typed("B")}))`,
        "result",
        {
          format: formatOf(frame, "pressure"),
        },
      ),
    ];
  });
  return [...heads, ...rows.flat()];
}

const plain = (address: string): string => address.replaceAll("$", "");

/** The first row of the printed curve that has something and is no point; 0 where all are. */
function wrongPoint(): string {
  const [airflows, pressures] = ["A", "B"].map((letter) => `$${letter}$${CURVE_HEADER + 1}:$${letter}$${CURVE_LAST}`);
  const isPoint = `ISNUMBER(${airflows})*ISNUMBER(${pressures})*(${airflows}>=0)*(${pressures}>=0)`;
  const wrong = `(LEN(${airflows})+LEN(${pressures})>0)*(1-${isPoint})`;
  return firstRow(wrong, airflows!);
}

/** The first row with an airflow that the columns beside it do not take up, as one that was inserted has none of their formulas. */
function unreadPoint(): string {
  const [typed, taken] = ["A", PRINTED.airflow].map((letter) => `$${letter}$${CURVE_HEADER}:$${letter}$${CURVE_LAST}`);
  return firstRow(`ISNUMBER(${typed})*(1-ISNUMBER(${taken}))`, typed!);
}

/** The first row whose airflow another has, too: the curve is refused then; 0 where none is. */
function twicePoint(): string {
  const airflows = `$A$${CURVE_HEADER + 1}:$A$${CURVE_LAST}`;
  return firstRow(`ISNUMBER(${airflows})*(COUNTIF(${airflows},${airflows})>1)`, airflows);
}

/** Whether this sheet is a duplicate with another curve than the one that Flow reads. */
export const isDuplicateFan = (frame: Frame): string =>
  isDuplicate(
    `$${CURVE_USED.airflow}$${CURVE_HEADER}:$${CURVE_USED.pressure}$${CURVE_LAST}`,
    frame.ref("flow", heldAt(NAMES)),
  );

/**
 * A sentence where a word is none of those to choose from, which a pasted one may be, or a row of the curve no point or not read; where all sheets are told
 * to take what was read, and that makes no curve; and where the conversion lacks its outlet, or gives what no fan has; else what is read. So short that it ends before the picture.
 */
export function curveTrouble(frame: Frame): string {
  const used = `$${PRINTED.pressure}$${CURVE_HEADER + 1}:$${PRINTED.pressure}$${CURVE_LAST}`;
  const own = answerColumn(OWN_ANSWER, "airflow");
  const outlet = plain(OUTLET_CELL);
  const none = `"Look: no fan: the readings make no curve, see A${OWN + 3}."`;
  const missing = `"Look: total pressure asks for the fan's outlet: type it in ${outlet}."`;
  const negative = `"Look: some static pressures fall below 0: is ${outlet} right, in "&${bySystem(frame, '"inches"', '"mm"')}&"?"`;
  const asRead = `IF(${isAsRead},"Used: as read below, ±: row ${THROTTLES}",${POINTS_CELL})`;
  const isOneOf = (cell: string, words: readonly string[]): string =>
    `OR(${words.map((word) => `LOWER(TRIM(${cell}))="${word}"`).join(",")})`;
  const kind = `"Look: ${plain(KIND_CELL)} must be static or total; it counts as static now."`;
  const choice = `"Look: ${plain(USED_CELL)} must be ${USED.printed} or ${USED.read}; as printed is used now."`;
  const point = `"Look: row "&${wrongPoint()}&" must have airflow and pressure, numbers from 0 on."`;
  const unread = `"Look: row "&${unreadPoint()}&" is not read: copy ${CURVE_USED.airflow} to ${PRINTED.pressure} into it."`;
  const twice = `"Look: row "&${twicePoint()}&" and another have one airflow: keep one of them."`;
  const above = aboveHeadings("B", 1, CURVE_HEADER, `COUNTA(${KIND_CELL},${OUTLET_CELL})+1`);
  const words = `IF(NOT(${isOneOf(KIND_CELL, KINDS)}),${kind},IF(NOT(${isOneOf(USED_CELL, Object.values(USED))}),${choice},""))`;
  const typed = `IF(${words}<>"",${words},IFERROR(IF(${wrongPoint()}>0,${point},IF(${unreadPoint()}>0,${unread},IF(${twicePoint()}>0,${twice},${above}))),"Look: an error stands in the curve."))`;
  const notRead = `"${duplicated("this curve")}"`;
  return `=IF(${isDuplicateFan(frame)},${notRead},IF(${typed}<>"",${typed},IF(AND(${isAsRead},COUNT(${own})<2),${none},IF(${isTotal},IF(${outletKnown},IF(COUNTIF(${used},"<0")>0,${negative},${asRead}),${missing}),${asRead}))))`;
}
