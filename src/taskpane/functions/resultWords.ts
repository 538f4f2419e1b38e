import type { FunctionAnswer, Cell } from "./callFunction";
import { itemAt } from "../../reference/itemAt";

/** A value as a cell without a format of its own shows it, rounded for reading. */
export const shownValue = (cell: Cell): string =>
  cell === null
    ? ""
    : typeof cell === "number"
      ? shownNumber(cell)
      : typeof cell === "boolean"
        ? cell
          ? "TRUE"
          : "FALSE"
        : cell;

const shownNumber = (number: number): string =>
  Number.isInteger(number) || Math.abs(number) >= 10_000
    ? String(Math.round(number))
    : String(Number(number.toPrecision(4)));

/** An answer in one line: the value with its unit, the error with its sentence, or how large the table is. */
export function resultWords(answer: FunctionAnswer, unit: string): string {
  if ("error" in answer) return answer.message === "" ? answer.error : `${answer.error} ${answer.message}`;
  const { rows } = answer;
  const [first] = rows[0] ?? [];
  if (rows.length === 1 && itemAt(rows, 0).length === 1)
    return `${shownValue(first ?? null)} ${unitBeside(first, unit)}`.trim();
  return `${rows.length} rows of ${rows[0]?.length ?? 0} cells`;
}

const unitBeside = (value: Cell | undefined, unit: string): string => (typeof value === "number" ? unit : "");

export const isTable = (answer: FunctionAnswer): answer is Extract<FunctionAnswer, { rows: unknown }> =>
  "rows" in answer && (answer.rows.length > 1 || (answer.rows[0]?.length ?? 0) > 1);
