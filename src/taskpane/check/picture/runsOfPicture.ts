import type { budgetColumns, BudgetKey, solveColumns, SolveKey } from "../../../reference/answerColumns";
import { placeOfColumn } from "../../../reference/columnsOfAnswers";
import { fromSI, toSI, unitOf } from "../../../reference/quantities";
import type { Cell } from "../../functions/callFunction";
import { isBehindDevice } from "../behindDevice";
import { type BookRuns, sameName } from "../runs";
import { saysAny, STILL_NOTES } from "../stillAir";

/** A run as the tree draws it, fan first. Numbers are in the budget's units. */
export interface PictureRun {
  readonly name: string;
  readonly joins: string; // the run that it joins, or fan
  readonly depth: number; // junctions between it and the fan
  readonly diameter: number | null;
  readonly airflow: number | null;
  readonly velocity: number | null;
  readonly settles: boolean;
  readonly shut: boolean;
}

/** The suction side from the fan outwards, each branch after the run that it joins, with an answer's airflows. */
export function runsOfPicture(
  { runs, system }: BookRuns,
  rows: readonly (readonly Cell[])[],
  columns: typeof budgetColumns | typeof solveColumns,
): PictureRun[] {
  type Row = (typeof rows)[number];
  const of = (row: Row | undefined, key: "run" | "airflow" | "velocity" | "note"): Cell | undefined =>
    row?.[placeOfColumn<BudgetKey | SolveKey>(columns, key)];
  const number = (cell: Cell | undefined): number | null => (typeof cell === "number" ? cell : null);
  const picture: PictureRun[] = [];
  const seen = new Set<string>();
  const add = (to: string, depth: number): void => {
    for (const run of runs) {
      if (run.discharge || !sameName(run.to, to) || seen.has(run.name)) continue;
      seen.add(run.name);
      const row = rows.find((one) => {
        const name = of(one, "run");
        return typeof name === "string" && sameName(name, run.name);
      });
      const velocity = number(of(row, "velocity"));
      const idle = isIdle(of(row, "note"));
      const si = velocity === null ? null : toSI(velocity, unitOf("velocity", system));
      picture.push({
        name: run.name,
        joins: to,
        depth,
        diameter: run.diameter === null ? null : fromSI(run.diameter, unitOf("diameter", system)),
        airflow: number(of(row, "airflow")),
        velocity,
        settles: !idle && si !== null && si > 0 && si < run.dust.low && !isBehindDevice(runs, run),
        shut: idle,
      });
      add(run.name, depth + 1);
    }
  };
  add("fan", 0);
  return picture;
}

const isIdle = (note: Cell | undefined): boolean => saysAny(String(note ?? ""), STILL_NOTES);
