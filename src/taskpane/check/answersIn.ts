import { type AnswerColumn, budgetColumns, solveColumns } from "../../reference/answerColumns";
import { headerOfColumn } from "../../reference/columnsOfAnswers";
import { toSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { type FoundTable, type LookedThrough, numberIn, tablesWith, textIn } from "./tablesIn";

/** A column that answers of BUDGET and of SOLVE have alike, or one of them. */
type Key = (typeof budgetColumns)[number]["key"] | (typeof solveColumns)[number]["key"];

/** One row of an answer of BUDGET or SOLVE, in SI. */
interface AnswerRow {
  readonly run: string;
  readonly airflow: number | null; // [m3/s]
  readonly leak: number; // [m3/s] its own; 0 where the answer has none
  readonly velocity: number | null; // [m/s]
  readonly gate: string;
  readonly note: string;
  readonly at: (key: Key) => string;
}

export interface BookAnswer {
  readonly of: "BUDGET" | "SOLVE";
  readonly sheet: string;
  readonly system: UnitSystem;
  readonly rows: readonly AnswerRow[]; // without the fan's
}

/** The columns of each answer, and those by which it is known. */
const answers = [
  { of: "BUDGET", columns: budgetColumns, known: ["run", "airflow", "velocity", "note", "pathLoss"] },
  { of: "SOLVE", columns: solveColumns, known: ["run", "airflow", "velocity", "note", "staticSuction"] },
] as const satisfies readonly { of: BookAnswer["of"]; columns: readonly AnswerColumn[]; known: readonly Key[] }[];

/** Every answer of BUDGET and SOLVE in a book, found by its headers. */
export const answersIn = (sheets: readonly LookedThrough[]): BookAnswer[] =>
  answers.flatMap(({ of, columns, known }) =>
    tablesWith(
      sheets,
      known.map((key) => headerOfColumn<AnswerColumn>(columns, key)),
      [],
      columns.map(({ header }) => header),
    ).map((table) => ({ of, sheet: table.sheet, system: table.system, rows: rowsOf(table, columns) })),
  );

function rowsOf(table: FoundTable, columns: readonly AnswerColumn[]): AnswerRow[] {
  const header = (key: Key): string => columns.find((column) => column.key === key)?.header ?? "";
  const text = (row: number, key: Key): string => textIn(table.value(row, header(key)));
  const si = (row: number, key: Key): number | null => {
    const value = numberIn(table.value(row, header(key)));
    const quantity = columns.find((column) => column.key === key)?.quantity;
    return value === null || quantity == null ? null : toSI(value, unitOf(quantity, table.system));
  };
  const fan = table.rows.find((row) => text(row, "run").toLowerCase() === "fan") ?? Infinity;
  return table.rows
    .filter((row) => row < fan && text(row, "run") !== "")
    .map((row) => ({
      run: text(row, "run"),
      airflow: si(row, "airflow"),
      leak: si(row, "leak") ?? 0,
      velocity: si(row, "velocity"),
      gate: text(row, "gate"),
      note: text(row, "note"),
      at: (key) => table.address(row, header(key)),
    }));
}
