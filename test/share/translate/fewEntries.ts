import { plain } from "../../../src/core/naming/findNamed";
import { lossFamilies, PLAIN_END } from "../../../src/reference/lossFamilies";
import { offeredEntries } from "../../../src/share/translate/tableBlocks/offeredEntries";
import type { Sheet, Workbook } from "../../../src/sheets/workbook";

/**
 * The workbook without the lines of its tables of fittings that nothing in it names or points at: a thousand lines that the grid would read for
 * every list. A line is blank then, and all others stand where they stood.
 */
export function withFewEntries(workbook: Workbook): Workbook {
  const cells = workbook.sheets.flatMap(({ name, cells: all }) => {
    if (name === "Workings") return all.filter((cell) => "formula" in cell); // its texts are headings, and names that it may offer
    return name === "Lookups" ? [] : all;
  });
  const words = cells.flatMap((cell) => ("formula" in cell ? quotedIn(cell.formula) : String(cell.value)));
  const pointedAt = new Set(cells.flatMap((cell) => ("formula" in cell ? singleRowsIn(cell.formula) : [])));
  const said = plain([PLAIN_END, ...new Set(words)].join(" "));
  const named = new Set(
    lossFamilies.filter(({ key, aliases }) => [key, ...aliases].some((name) => said.includes(plain(name)))),
  );
  const unnamed = new Set(offeredEntries().flatMap(({ text, family }) => (named.has(family) ? [] : [text])));
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => {
      if (sheet.name === "Workings") return withoutHeld(sheet, unnamed);
      return sheet.name === "Lookups" ? cut(sheet, unnamed, pointedAt) : sheet;
    }),
  };
}

/** The names by which a copy tells that one is gone from its tables. */
const withoutHeld = (sheet: Sheet, unnamed: ReadonlySet<string>): Sheet => ({
  ...sheet,
  cells: sheet.cells.filter((cell) => {
    const held = "value" in cell ? String(cell.value) : "";
    return !held.startsWith("·") || !unnamed.has(held.replaceAll("·", ""));
  }),
});

/** Rows of the tables that a formula takes a single cell of. */
const singleRowsIn = (formula: string): string[] =>
  [...formula.matchAll(/Lookups'?!\$[A-Z]+\$(\d+)(?![\d:])/g)].map(([, row]) => row!);

const quotedIn = (formula: string): string[] => formula.match(/"[^"]+"/g) ?? [];

function cut(sheet: Sheet, unnamed: ReadonlySet<string>, pointedAt: ReadonlySet<string>): Sheet {
  const row = (at: string): string => at.replace(/^[A-Z]+/, "");
  // of curves, and of the names that they are read by: both are few
  const lines = new Set(
    sheet.cells.flatMap((cell) => {
      const isName = cell.at.startsWith("B") && "value" in cell && typeof cell.value === "string";
      return isName || cell.at.startsWith("D") ? [row(cell.at)] : [];
    }),
  );
  const gone = new Set(
    sheet.cells.flatMap((cell) =>
      "value" in cell &&
      unnamed.has(String(cell.value)) &&
      cell.at.startsWith("A") &&
      !lines.has(row(cell.at)) &&
      !pointedAt.has(row(cell.at))
        ? [row(cell.at)]
        : [],
    ),
  );
  return { ...sheet, cells: sheet.cells.filter(({ at }) => !gone.has(row(at))) };
}
