import { ROUNDING } from "../../../core/fan/operatingPoint";
import { cellAddress, columnLetters } from "../../../sheets/address";
import { sheetPrefix } from "../../../sheets/sheetPrefix";
import { quotedText } from "../../references";
import type { Workings } from "../workings";
import type { CurvePlace } from "./fanCurve";
import { NO_ANSWER, num } from "./text";

/** Where a fan's curve meets a system, as cells of the workings; each is #N/A where they do not meet within the curve. */
export interface Meeting {
  readonly airflow: string;
  readonly pressure: string;
  readonly crossings: string;
  readonly fromRest: string; // where a fan that starts from rest stays
}

const COLUMNS = [
  "surplus", // of the fan's pressure at a point of the curve
  "first", // surplus = surplus at the point + first t + second t^2 + third t^3 over the piece behind it
  "second",
  "third",
  "turn 1", // shares of the piece at which it turns, 0 and 1 where it does not
  "turn 2",
  "at turn 1",
  "at turn 2",
  "crossings",
  "last fall", // which of the three stretches of the piece falls through nothing, 0 none
  "first fall",
  "row of last",
  "row of first",
] as const;
type Column = (typeof COLUMNS)[number];

const HALVINGS = 50;
const NO_ROW = 9999;

/**
 * The curve meets p = fixed + (pressure - fixed) (Q / airflow)^2. Each piece of the curve is a cubic, so the surplus of pressure is
 * one too; it is cut where it turns, and the stretch that falls through nothing is halved until no digit is left.
 *
 * @param design airflow, pressure and fixed part as formulas on any sheet, in the curve's own units
 */
export function meeting(
  curve: CurvePlace,
  rows: number,
  design: Readonly<Record<"airflow" | "pressure" | "fixed", string>>,
  workings: Workings,
): Meeting {
  const { airflow, pressure, fixed } = design;
  const width = Math.max(COLUMNS.length, BEFORE_HALVES + HALVINGS + 1);
  const place = workings.once(`meeting ${curve.airflows} ${airflow} ${pressure} ${fixed}`, () =>
    workings.place(rows + 5, width, ({ top, left }) => {
      const at = (column: Column, row: number): string => cellAddress(left + COLUMNS.indexOf(column), top + 1 + row);
      const all = (column: Column): string => {
        const letter = columnLetters(left + COLUMNS.indexOf(column));
        return `$${letter}$${top + 2}:$${letter}$${top + 1 + rows}`;
      };
      const system = `$A$${top}`;
      const points = Array.from({ length: rows }, (_, index) => pointCells(curve, at, index + 1, system, fixed, rows));
      const start = `INDEX(${all("surplus")},1)`;
      const end = `INDEX(${all("surplus")},${curve.count})`;
      const never = `AND(MAX(${all("row of last")})=0,${start}<>0)`;
      const roots = (["last", "first"] as const).map((which, below) =>
        rootCells(curve, all, which, { row: top + rows + 2 + below, left }),
      );
      const pad = (cells: string[]): string[] => [...cells, ...new Array<string>(width - cells.length).fill("")];
      const [last, first] = [0, 1].map((below) => cellAddress(left + width - 1, top + rows + 2 + below)) as [
        string,
        string,
      ];
      const none = `OR(${end}>0,${never})`;
      const found = (root: string): string =>
        `IF(${none},${NO_ANSWER},IF(MAX(${all("row of last")})=0,INDEX(${curve.airflows},1),${root}))`;
      return [
        pad([
          `(${pressure}-${fixed})/${airflow}^2`,
          quotedText("Where a fan's curve meets a system: pressure over airflow²"),
        ]),
        pad(COLUMNS.map(quotedText)),
        ...points.map(pad),
        ...roots.map(pad),
        pad([
          found(last),
          `${fixed}+${system}*${cellAddress(left, top + rows + 4)}^2`,
          `IF(${none},${NO_ANSWER},MAX(1,SUM(${all("crossings")})))`,
          found(first),
        ]),
      ];
    }),
  );
  const cell = (column: number): string =>
    `${sheetPrefix(place.sheet)}$${columnLetters(place.left + column)}$${place.bottom}`;
  return { airflow: cell(0), pressure: cell(1), crossings: cell(2), fromRest: cell(3) };
}

/** A point of the curve and the piece behind it. The surplus at the end of a piece is that of the next point, to the last digit. */
function pointCells(
  curve: CurvePlace,
  at: (column: Column, row: number) => string,
  row: number,
  system: string,
  fixed: string,
  rows: number,
): string[] {
  const given = (column: string, next = 0): string => `INDEX(${column},${row + next})`;
  const [x, y] = [given(curve.airflows), given(curve.pressures)];
  const surplus = `(${y}-${fixed}-${system}*${x}^2)`;
  const wide = `(${given(curve.airflows, 1)}-${x})`;
  const rise = `(${given(curve.pressures, 1)}-${y})`;
  const [here, there] = [`${given(curve.slopes)}*${wide}`, `${given(curve.slopes, 1)}*${wide}`];
  const [d0, d1, d2, d3] = (["surplus", "first", "second", "third"] as const).map((name) => at(name, row)) as [
    string,
    string,
    string,
    string,
  ];
  const [t1, t2, g1, g2] = (["turn 1", "turn 2", "at turn 1", "at turn 2"] as const).map((name) => at(name, row)) as [
    string,
    string,
    string,
    string,
  ];
  const piece = (formula: string): string => (row === rows ? "0" : `IF(${curve.count}<${row + 1},0,${formula})`);
  const g3 = row === rows ? "0" : at("surplus", row + 1);
  const root = `SQRT(MAX(0,${d2}^2-3*${d1}*${d3}))`;
  const q = `(0-${d2}-IF(${d2}<0,0-1,1)*${root})`;
  const turns = [`MEDIAN(0,1,IFERROR(${q}/(3*${d3}),0))`, `MEDIAN(0,1,IFERROR(${d1}/${q},0))`].join(",");
  const along = (t: string): string => `${d0}+${t}*(${d1}+${t}*(${d2}+${t}*${d3}))`;
  const falls = (order: readonly number[]): string => {
    const ends = [d0, g1, g2, g3];
    return order.reduceRight((rest, part) => `IF(AND(${ends[part - 1]!}>0,${ends[part]!}<=0),${part},${rest})`, "0");
  };
  const crosses = (from: string, to: string): string => `IF((${from}>0)<>(${to}>0),1,0)`;
  return [
    `IF(${curve.count}<${row},0,IF(ABS(${surplus})<=${num(ROUNDING)}*MAX(${curve.pressures}),0,${surplus}))`,
    piece(`${here}-2*${system}*${x}*${wide}`),
    piece(`3*${rise}-2*${here}-${there}-${system}*${wide}^2`),
    piece(`${here}+${there}-2*${rise}`),
    piece(`MIN(${turns})`),
    piece(`MAX(${turns})`),
    piece(along(t1)),
    piece(along(t2)),
    piece([crosses(d0, g1), crosses(g1, g2), crosses(g2, g3)].join("+")),
    piece(falls([3, 2, 1])),
    piece(falls([1, 2, 3])),
    piece(`IF(${at("last fall", row)}>0,${row},0)`),
    row === rows
      ? String(NO_ROW)
      : `IF(${curve.count}<${row + 1},${NO_ROW},IF(${at("first fall", row)}>0,${row},${NO_ROW}))`,
  ];
}

const BEFORE_HALVES = 8; // cells of a root before its halvings

/** The stretch that falls through nothing, halved again and again: its row, its cubic, and a lower bound of the share in each cell. */
function rootCells(
  curve: CurvePlace,
  all: (column: Column) => string,
  which: "last" | "first",
  { row, left }: { readonly row: number; readonly left: number },
): string[] {
  const cell = (column: number): string => `$${columnLetters(left + column)}$${row}`;
  const place = which === "last" ? `MAX(${all("row of last")})` : `MIN(${all("row of first")})`;
  const of = (column: Column): string => `INDEX(${all(column)},${cell(0)})`;
  const [d0, d1, d2, d3, stretch, start, wide] = [1, 2, 3, 4, 5, 6, 7].map(cell) as [
    string,
    string,
    string,
    string,
    string,
    string,
    string,
  ];
  const halves = Array.from({ length: HALVINGS }, (_, step) => {
    const before = step === 0 ? start : cell(BEFORE_HALVES + step - 1);
    const half = `${wide}/2^${step + 1}`;
    const middle = `(${before}+${half})`;
    return `${before}+IF(${d0}+${middle}*(${d1}+${middle}*(${d2}+${middle}*${d3}))>0,${half},0)`;
  });
  const x = `INDEX(${curve.airflows},${cell(0)})`;
  return [
    `MAX(1,MIN(${place},ROWS(${all("surplus")})))`,
    ...(["surplus", "first", "second", "third"] as const).map(of),
    `MAX(1,${of(`${which} fall`)})`,
    `CHOOSE(${stretch},0,${of("turn 1")},${of("turn 2")})`,
    `CHOOSE(${stretch},${of("turn 1")},${of("turn 2")},1)-${start}`,
    ...halves,
    `${x}+${cell(BEFORE_HALVES + HALVINGS - 1)}*(INDEX(${curve.airflows},${cell(0)}+1)-${x})`,
  ];
}
