import type { SheetKey } from "../../../sheets/sheetKeys";
import type { StyleName } from "../../../sheets/styles";
import type { Sheet, SheetCell } from "../../../sheets/workbook";
import { type CheckRule, type Finding, practice } from "../finding";

const COMPUTED = new Set<unknown>(["result", "resultInWords", "total", "label", "unit"] satisfies StyleName[]); // none of them ever holds a number that a budget came with

/** Sheets with numbers that stand there as they are: tables, and sizes that a search has found. */
const STILL = new Set<SheetKey | undefined>([undefined, "sizes", "tables", "cautions", "about"]);

const WHY =
  "The formula is gone: nothing that you change elsewhere reaches this cell any more, and all that reads it goes by what was typed. Undo it, or copy the formula from the same sheet of a new budget (Build). Where you mean it, leave it so.";

/** What was typed into cells of a budget that compute, told once for each sheet: the formula is gone, and the cell looks as before. */
export const typedOver: CheckRule = ({ book }) => book.workbook.sheets.flatMap(onSheet);

function onSheet({ name, key, cells }: Sheet): Finding[] {
  if (STILL.has(key) || !cells.some((cell) => "formula" in cell)) return []; // nothing computes in a copy of values
  const [first, ...more] = cells.flatMap((cell) => typedIn(cell, key) ?? []);
  if (first === undefined) return [];
  const others = more.slice(0, 3).map(({ at }) => at);
  const left = more.length - others.length;
  const named = left > 0 ? [...others, `${left} more`] : others;
  const so =
    named.length === 0
      ? ""
      : `; so ${more.length === 1 ? "does" : "do"} ${named.join(", ").replace(/, ([^,]*)$/, " and $1")}`;
  const value = typeof first.value === "number" ? first.value.toLocaleString("en", { maximumSignificantDigits: 6 }) : `"${first.value}"`; // prettier-ignore
  return [
    {
      rule: "Typed over a formula",
      what: `${first.at} holds ${value}, typed where this sheet computes${so}.`,
      why: WHY,
      source: practice,
      sheet: name,
      at: first.at,
    },
  ];
}

/** A text is told in results alone: in the other looks stand words of the sheets' own. */
function typedIn(
  cell: SheetCell,
  key: SheetKey | undefined,
): { readonly at: string; readonly value: string | number } | null {
  if ("formula" in cell || !COMPUTED.has(cell.style)) return null;
  const { at, value, style } = cell;
  const isWord = typeof value === "string" && style === "result" && key !== "start";
  return typeof value === "number" || isWord ? { at, value } : null;
}
