import type { SheetCell } from "../../../sheets/workbook";
import type { Package } from "./package";
import { richText } from "./sharedStrings";
import { child, childrenOf } from "./xml";

/** Notes of a sheet by address. */
export function notesOf(file: Package, sheet: string): ReadonlyMap<string, string> {
  const part = file.relations(sheet).find(({ kind }) => kind === "comments")?.part;
  const root = part === undefined ? undefined : file.xml(part);
  return new Map(
    childrenOf(child(root, "commentList"), "comment").flatMap((node) => {
      const note = richText(child(node, "text"));
      return node.attributes.ref === undefined || note === "" ? [] : [[node.attributes.ref, note] as const];
    }),
  );
}

/** Gives each note to its cell; a note on a cell with nothing in it makes it a cell. */
export function withNotes(cells: readonly SheetCell[], notes: ReadonlyMap<string, string>): SheetCell[] {
  const left = new Map(notes);
  const noted = cells.map((cell) => {
    const note = left.get(cell.at);
    left.delete(cell.at);
    return note === undefined ? cell : { ...cell, note };
  });
  return [...noted, ...[...left].map(([at, note]) => ({ at, value: null, note }))];
}
