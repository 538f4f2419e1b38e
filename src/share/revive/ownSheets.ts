import type { Sheet, Workbook } from "../../sheets/workbook";
import { ORIGINALS_MARK } from "../originals";
import { readRecord } from "./record";

/** The sheet that says what a club copy was made from; undefined where the book is none. */
export const recordIn = ({ sheets }: Workbook): Sheet | undefined =>
  sheets.find(({ cells }) =>
    cells.some((cell) => cell.at === "A1" && "value" in cell && cell.value === ORIGINALS_MARK),
  );

/** The sheets that are a club copy's own, in small letters: what stands there is no part of the budget. */
export function ownSheets(workbook: Workbook): ReadonlySet<string> {
  const record = recordIn(workbook);
  return new Set(
    record === undefined ? [] : [record.name, ...readRecord(record).added].map((name) => name.toLowerCase()),
  );
}
