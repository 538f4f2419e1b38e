import { rectangleText } from "../../sheets/rectangle";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import type { Seen } from "../check/seenIn";
import type { FoundTable } from "../check/tablesIn";
import { itemAt, lastOf } from "../../reference/itemAt";

/** The range of the open book that an argument most likely means; null where the book has none. */
export function suggestedRange(parameter: string, seen: Seen | null): string | null {
  if (seen === null) return null;
  if (parameter === "runs") {
    const [found] = seen.runs;
    if (found === undefined) return null;
    const lastRow = Math.max(
      ...found.table.rows.filter(
        (row) => found.table.value(row, "run") !== null && found.table.value(row, "to") !== null,
      ),
    );
    return rangeOf(found.table, lastRow);
  }
  if (parameter === "curve") {
    const [found] = seen.curves;
    return found === undefined ? null : rangeOf(found.table, found.lastRow);
  }
  return null;
}

function rangeOf({ sheet, headerRow, headers }: FoundTable, lastRow: number): string {
  const [left, right] = [itemAt(headers, 0).column, lastOf(headers).column];
  return `${sheetPrefix(sheet)}${rectangleText({ top: headerRow, left, bottom: lastRow, right })}`;
}
