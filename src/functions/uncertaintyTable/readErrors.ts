import { DomainError, type Limits } from "../../core/errors";
import { findNamed, plain, requireNamed } from "../../core/naming/findNamed";
import { inputErrors, type InputErrorRow } from "../../reference/inputErrors";
import { LEAST_PERCENT } from "../../reference/leastPercent";
import { NONE } from "../../reference/zeroWords";
import { readWithin } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, isNothing, toMatrix } from "../cells";

/** Standard deviations of the logarithms of the factors, by their keys in the table. */
export type Deviations = ReadonlyMap<string, number>;

const PERCENT: Limits = { atLeast: LEAST_PERCENT, atMost: 200 };
const FACTOR: Limits = { above: 1, atMost: 100 };

/**
 * The table of errors: what, and ± in percent (of a leak: times or over). What it does not name is as usual.
 *
 * @throws DomainError that names what is wrong
 */
export function readErrors(given: unknown): Deviations {
  const found = new Map(inputErrors.map((row) => [row.key, deviationOf(row, row.percent ?? row.factor!)]));
  if (given == null) return found;
  const matrix = toMatrix(given);
  const width = matrix[0]!.length;
  if (matrix.length === 1 && width === 1 && isNothing(matrix[0]![0]!)) return found;
  if (width !== 2) throw new DomainError("errors", `${width} columns`, "two columns: what, and its ± in %");
  const seen = new Set<string>();
  matrix.forEach(([what = null, cell = null], index) => {
    if (isNothing(what) && isNothing(cell)) return;
    if (index === 0 && isHeading(what, cell)) return;
    if (typeof what !== "string")
      return refuseCell(`what in row ${index + 1} of errors`, what, `a name in the table "input errors"`);
    const row = requireNamed(`what in row ${index + 1} of errors`, inputErrors, what, `a name in the table "input errors"`); // prettier-ignore
    if (seen.has(row.key)) throw new DomainError(`what in row ${index + 1} of errors`, what, "named once");
    seen.add(row.key);
    found.set(row.key, readDeviation(row, cell));
  });
  return found;
}

function readDeviation(row: InputErrorRow, cell: Cell): number {
  const name = `${row.key} in errors`;
  if (saysNone(cell)) return 0;
  const usual = row.percent ?? row.factor!;
  if (isNothing(cell))
    return refuseCell(name, cell, `a number above 0, "${NONE[0]!}" for 0, or its row left out for ${usual}`);
  return deviationOf(row, readWithin(name, cell, "ratio", row.percent === null ? FACTOR : PERCENT, "IP"));
}

const deviationOf = ({ percent }: InputErrorRow, value: number): number =>
  percent === null ? Math.log(value) : value / 100;

/** Words that name no input: beside a name, "40%" is a number that cannot be read. */
const isHeading = (what: Cell, cell: Cell): boolean =>
  typeof cell === "string" &&
  !isNumeric(cell) &&
  !saysNone(cell) &&
  !(typeof what === "string" && findNamed(inputErrors, what));
const saysNone = (cell: Cell): boolean => typeof cell === "string" && NONE.includes(plain(cell));
const isNumeric = (cell: string): boolean => cell.trim() !== "" && Number.isFinite(Number(cell));
