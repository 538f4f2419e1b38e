import { cellAddress, columnLetters } from "../../../sheets/address";
import { cellOf } from "../../formula/ranges";
import { quotedText } from "../../references";
import { type RangeRef, rangeText } from "../../../sheets/rangeRef";
import { isSameText } from "../lettersApart";
import type { Argument } from "../translation";
import type { Workings } from "../workings";
import { both, isBlankOrZero, NO_ANSWER } from "./text";
import { itemAt } from "../../../reference/itemAt";
import { rowsOf } from "../../../sheets/rectangle";
import { sheetPrefix } from "../../../sheets/sheetPrefix";

/** A fan curve as a call is given it: where it stands, and what it shows when the copy is made. */
export type CurveGiven = Pick<Argument, "value" | "computed"> & { readonly range: RangeRef };

/** A fan curve on the workings: its points sorted, with the slope at each. Columns as formulas on any sheet write them. */
export interface CurvePlace {
  readonly airflows: string; // rising; "" below the last point
  readonly pressures: string;
  readonly slopes: string;
  readonly count: string; // how many points
  readonly kind: (row: number) => string; // "point", "blank" or "heading" of a row of the range, from 0
}

const COLUMNS = [
  "row is",
  "airflow",
  "pressure",
  "sorted airflow",
  "sorted pressure",
  "width",
  "secant",
  "slope",
] as const;
type Column = (typeof COLUMNS)[number];

/**
 * The curve in a range of two columns. A row that is half filled, below 0 or no number, or an airflow that stands twice, makes
 * every reading #N/A. Slopes: monotone piecewise cubic, Fritsch-Carlson, three-point slopes at the ends, as in the core.
 */
export function curvePlace(given: CurveGiven, workings: Workings): CurvePlace {
  const curve = given.range;
  const rows = rowsOf(curve);
  const place = workings.once(`curve ${JSON.stringify(curve)}`, () =>
    workings.place(rows + 2, COLUMNS.length, (range) => curveRows(given, range, rows)),
  );
  const prefix = sheetPrefix(place.sheet);
  const column = (name: Column): string => {
    const letter = columnLetters(place.left + COLUMNS.indexOf(name));
    return `${prefix}$${letter}$${place.top + 2}:$${letter}$${place.bottom}`;
  };
  return {
    airflows: column("sorted airflow"),
    pressures: column("sorted pressure"),
    slopes: column("slope"),
    count: `${prefix}$B$${place.top}`,
    kind: (row) => `${prefix}$A$${place.top + 2 + row}`,
  };
}

function curveRows(given: CurveGiven, range: RangeRef, rows: number): string[][] {
  const curve = given.range;
  const first = range.top + 2;
  const at = (column: Column, row: number): string => cellAddress(range.left + COLUMNS.indexOf(column), first + row);
  const all = (column: Column): string => `${dollars(at(column, 0))}:${dollars(at(column, rows - 1))}`;
  const count = `$B$${range.top}`;
  const asMany = `$C$${range.top}`; // a point whose row is inserted would be in none of the lines
  const line = (row: number): string[] => {
    const [q, p] = [cellOf(curve, row, 0, range.sheet), cellOf(curve, row, 1, range.sheet)];
    const [x, y] = [at("sorted airflow", row), at("sorted pressure", row)];
    const beyond = `${count}<${row + 1}`;
    const last = `${count}<${row + 2}`;
    const before = row === 0 ? "TRUE" : `COUNTIF(${dollars(at("row is", 0))}:${at("row is", row - 1)},"blank")=${row}`;
    const words = `AND(${before},NOT(ISNUMBER(${q})),NOT(ISNUMBER(${p})))`;
    const stands = isHeading(given, row, [q, p]);
    const heading = stands === null ? '"heading"' : `IF(${stands},"heading",${NO_ANSWER})`;
    const numbers = `IF(AND(ISNUMBER(${q}),ISNUMBER(${p})),IF(AND(${q}>=0,${p}>=0),"point",${NO_ANSWER}),IF(${words},${heading},${NO_ANSWER}))`;
    const kind = at("row is", row);
    const twice = row === 0 ? null : `${x}=${at("sorted airflow", row - 1)}`;
    const read = `INDEX(${all("pressure")},MATCH(${x},${all("airflow")},0))`;
    return [
      `IF(${asMany}=1,IF(${both([isBlankOrZero(q), isBlankOrZero(p)])},"blank",${numbers}),${NO_ANSWER})`,
      `IF(${kind}="point",${q},"")`,
      `IF(${kind}="point",${p},"")`,
      `IF(${beyond},"",SMALL(${all("airflow")},${row + 1}))`,
      `IF(${beyond},"",${twice === null ? read : `IF(${twice},${NO_ANSWER},${read})`})`,
      row === rows - 1 ? '""' : `IF(${last},"",${at("sorted airflow", row + 1)}-${x})`,
      row === rows - 1 ? '""' : `IF(${last},"",(${at("sorted pressure", row + 1)}-${y})/${at("width", row)})`,
      `IF(${beyond},"",${slope(row, rows, at, count)})`,
    ];
  };
  return [
    [
      quotedText("Points of a fan curve"),
      `SUMPRODUCT((${all("row is")}="point")*1)`,
      `IF(ROWS(${rangeText(curve)})=${rows},1,0)`,
      "",
      "",
      "",
      "",
      "",
    ],
    COLUMNS.map(quotedText),
    ...Array.from({ length: rows }, (_, row) => line(row)),
  ];
}

/**
 * Whether a row of words is the heading that stood there: another may tell another unit, and a first point that is no number may look like one.
 * Null where nobody knows what stood there.
 */
function isHeading({ value, computed }: CurveGiven, row: number, cells: readonly string[]): string | null {
  if (computed === true) return null;
  const words = cells.map((_, column) => {
    const word = value[row]?.[column] ?? null;
    return typeof word === "string" ? word.trim() : "";
  });
  if (words.every((word) => word === "")) return "FALSE";
  return both(cells.map((cell, column) => isSameText(cell, itemAt(words, column))));
}

const dollars = (address: string): string => address.replace(/([A-Z]+)(\d+)/, "$$$1$$$2");

function slope(row: number, rows: number, at: (column: Column, row: number) => string, count: string): string {
  const end = (near: number, next: number): string =>
    endSlope(at("width", near), at("width", next), at("secant", near), at("secant", next));
  const line = at("secant", 0);
  if (row === 0) return `IF(${count}<2,${NO_ANSWER},IF(${count}=2,${line},${rows > 2 ? end(0, 1) : line}))`;
  const atEnd = row === 1 ? `IF(${count}=2,${line},${NO_ANSWER})` : end(row - 1, row - 2);
  if (row === rows - 1) return atEnd;
  return `IF(${count}=${row + 1},${atEnd},${innerSlope(at("width", row - 1), at("width", row), at("secant", row - 1), at("secant", row))})`;
}

/** Weighted harmonic mean of the neighbouring secants; flat where they turn. */
const innerSlope = (before: string, after: string, left: string, right: string): string =>
  `IF(${left}*${right}<=0,0,3*(${before}+${after})/((2*${after}+${before})/${left}+(${after}+2*${before})/${right}))`;

/** Three-point slope at an end, held so that the first piece stays monotone. */
function endSlope(near: string, next: string, secant: string, nextSecant: string): string {
  const three = `(((2*${near}+${next})*${secant}-${near}*${nextSecant})/(${near}+${next}))`;
  return `IF(${three}*${secant}<=0,0,IF(AND(${secant}*${nextSecant}<0,ABS(${three})>3*ABS(${secant})),3*${secant},${three}))`;
}

/**
 * The cell of the workings with the pressure at an airflow, in the curve's own units; #N/A outside the curve. The cells beside
 * it hold the piece of the curve (from 1), where it starts, how wide and high it is, its slopes, and the share of it passed.
 *
 * @param airflow as a formula on any sheet writes it
 */
export function pressureOnCurve(curve: CurvePlace, airflow: string, workings: Workings): string {
  const { airflows, pressures, slopes, count } = curve;
  const { sheet, top, left } = workings.place(1, 9, (range) => {
    const [piece, x, width, y, rise, start, end, t] = Array.from({ length: 8 }, (_, column) =>
      cellAddress(range.left + column, range.top),
    ) as [string, string, string, string, string, string, string, string];
    const inside = `AND(${airflow}>=MIN(${airflows}),${airflow}<=MAX(${airflows}))`;
    const found = `MAX(1,MIN(${count}-1,SUMPRODUCT((${airflows}<=${airflow})*1)))`;
    const next = (column: string): string => `INDEX(${column},${piece}+1)`;
    return [
      [
        `IF(${inside},${found},${NO_ANSWER})`,
        `INDEX(${airflows},${piece})`,
        `${next(airflows)}-${x}`,
        `INDEX(${pressures},${piece})`,
        `${next(pressures)}-${y}`,
        `INDEX(${slopes},${piece})*${width}`,
        `${next(slopes)}*${width}`,
        `(${airflow}-${x})/${width}`,
        `${y}+${t}*(${start}+${t}*((3*${rise}-2*${start}-${end})+${t}*(${start}+${end}-2*${rise})))`,
      ],
    ];
  });
  return `${sheetPrefix(sheet)}${dollars(cellAddress(left + 8, top))}`;
}
