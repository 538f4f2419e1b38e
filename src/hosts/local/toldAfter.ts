import { eitherWay } from "../../sheets/eitherWay";
import { hasDecimalComma } from "./days";
import type { GridModel } from "./grid";

interface Done {
  readonly type: string;
  readonly clipboardContent?: { readonly text?: string };
}

const MERGED =
  "Merged cells: formulas read what the first of them holds, and the others are blank to them. Save and a reload keep the cells, not their merging.";

/** What leaves selected what it wrote. */
const WRITES = /^(PASTE|AUTOFILL$|COPY_PASTE_CELLS_)/; // the last are Ctrl+D, Ctrl+R and Ctrl+Enter

/** What must be said right after something was done, since no cell says it; null where nothing must. */
export function toldAfter({ type, clipboardContent }: Done, model: GridModel): string | null {
  if (type === "ADD_MERGE") return MERGED;
  if (!WRITES.test(type)) return null;
  const pasted = type === "PASTE_FROM_OS_CLIPBOARD" ? pastedWords(clipboardContent?.text ?? "") : null;
  return [hiddenWords(model), pasted].filter((words) => words !== null).join(" ") || null;
}

/** Rows that are hidden, by a filter or by hand, take what was meant for the next one that is seen. */
function hiddenWords({ getters }: GridModel): string | null {
  const [sheetId, { top, bottom }] = [getters.getActiveSheetId(), getters.getSelectedZone()];
  const hidden: number[] = [];
  for (let row = top; row <= bottom; row++) if (getters.isRowHidden(sheetId, row)) hidden.push(row + 1);
  const rows = `${hidden.slice(0, MOST_SHOWN).join(", ")}${hidden.length > MOST_SHOWN ? " and more" : ""}`;
  return hidden.length === 0 ? null : `Rows that are hidden were written over, too: ${rows}. Undo takes that back.`;
}

const DECIMAL_COMMA = /^[+-]?\d+,\d{1,2}$/;
const MOST_SHOWN = 3;

/** A table from a program that writes decimal commas: what parts thousands there is read the other way round here. */
function pastedWords(text: string): string | null {
  const cells = text.split(/[\t\n]/).map((cell) => cell.trim());
  const comma = cells.find((cell) => DECIMAL_COMMA.test(cell) || hasDecimalComma(cell));
  const doubtful = cells.filter((cell) => eitherWay(cell) !== null);
  if (comma === undefined || doubtful.length === 0) return null;
  const shown = doubtful.slice(0, MOST_SHOWN).map((cell) => `${cell} is ${Number(cell.replace(",", ""))} here`);
  const more = doubtful.length > MOST_SHOWN ? `, and so on for ${doubtful.length - MOST_SHOWN} more` : "";
  return `This table has decimal commas (${comma}), which stay texts, and numbers that can be read in two ways: ${shown.join(", ")}${more}. Type decimals with a point, and thousands without a sign.`;
}
