import type { ReferenceTable } from "../../reference";
import { type Source, sources } from "../../reference/sources";
import { provenanceOf } from "./provenance";
import type { Cell } from "./values";

const repealedTitles = new Set(
  Object.values<Source>(sources).flatMap(({ title, repealed }) => (repealed ? [title] : [])),
);

/** Whether a row holds no longer: its source is repealed, or it says of itself that it is not in force. */
export function isRepealed(table: ReferenceTable, row: readonly Cell[]): boolean {
  const inForce = table.columns.findIndex(({ name }) => name === "in force");
  return (
    repealedTitles.has(provenanceOf(row).source) ||
    repealedTitles.has(String(row[1])) ||
    (inForce >= 0 && row[inForce] === "no")
  );
}
