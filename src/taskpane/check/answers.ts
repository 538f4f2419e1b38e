import { toSI, type UnitSystem, unitOf } from "../../reference/quantities";
import type { Calculated } from "../../sheets/calculated";
import { numberIn, systemOf, tablesWith, textIn } from "./tablesIn";

/** One row of an answer of BUDGET or SOLVE, in SI. */
interface AnswerRow {
  readonly run: string;
  readonly airflow: number | null; // [m3/s]
  readonly leak: number; // [m3/s] its own; 0 where the answer has none
  readonly velocity: number | null; // [m/s]
  readonly gate: string;
  readonly note: string;
  readonly at: (column: string) => string;
}

export interface Answer {
  readonly of: "BUDGET" | "SOLVE";
  readonly sheet: string;
  readonly system: UnitSystem;
  readonly rows: readonly AnswerRow[]; // without the fan's
}

/** Every answer of BUDGET and SOLVE in a book, found by its headers. */
export function answersIn(book: Calculated): Answer[] {
  return (["BUDGET", "SOLVE"] as const).flatMap((of) =>
    tablesWith(book, [
      "run",
      "airflow",
      "velocity",
      "note",
      of === "BUDGET" ? "path loss to fan" : "static suction",
    ]).map((table) => {
      const system = systemOf(table);
      const fan = table.rows.find((row) => textIn(table.value(row, "run")).toLowerCase() === "fan") ?? Infinity;
      const si = (row: number, header: string, quantity: "airflow" | "velocity"): number | null => {
        const value = numberIn(table.value(row, header));
        return value === null ? null : toSI(value, unitOf(quantity, system));
      };
      const rows = table.rows
        .filter((row) => row < fan && textIn(table.value(row, "run")) !== "")
        .map((row) => ({
          run: textIn(table.value(row, "run")),
          airflow: si(row, "airflow", "airflow"),
          leak: si(row, "leak", "airflow") ?? 0,
          velocity: si(row, "velocity", "velocity"),
          gate: textIn(table.value(row, "gate")),
          note: textIn(table.value(row, "note")),
          at: (column: string) => table.address(row, column),
        }));
      return { of, sheet: table.sheet, system, rows };
    }),
  );
}
