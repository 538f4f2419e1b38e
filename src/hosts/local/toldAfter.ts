import { eitherWay } from "../../sheets/eitherWay";
import { hasDecimalComma } from "./days";
import type { GridModel } from "./grid";
import { hiddenWords, removedHidden, type Zone } from "./hiddenLines";

interface Done {
  readonly type: string;
  readonly target?: readonly Zone[];
  readonly commands?: readonly { readonly sheetId?: string }[]; // of what was undone or done again
  readonly clipboardContent?: { readonly text?: string };
}

const MERGED =
  "Merged cells: formulas read what the first of them holds, and the others are blank to them. Save and a reload keep the cells, not their merging.";

/** What leaves selected what it wrote. */
const WRITES = /^(PASTE|AUTOFILL$|COPY_PASTE_CELLS_)/; // the last are Ctrl+D, Ctrl+R and Ctrl+Enter

/** What must be said right after something was done, since no cell says it; null where nothing must. */
export function toldAfter(done: Done, model: GridModel): string | null {
  const { type, target = [], commands = [], clipboardContent } = done;
  if (type === "ADD_MERGE") return MERGED;
  if (type === "UNDO") return outOfSight(commands, model, "Undone");
  if (type === "REDO") return outOfSight(commands, model, "Done again");
  if (type === "DELETE_CONTENT") return hiddenWords(model.getters, target, "emptied");
  if (type === "REMOVE_COLUMNS_ROWS") return removedHidden(done);
  if (!WRITES.test(type)) return null;
  const pasted = type === "PASTE_FROM_OS_CLIPBOARD" ? pastedWords(clipboardContent?.text ?? "") : null;
  const written = hiddenWords(model.getters, [model.getters.getSelectedZone()], "written over");
  return [written, pasted].filter((words) => words !== null).join(" ") || null;
}

/** What is taken back on a sheet that is not in front is seen by nobody, who then takes back more. */
function outOfSight(commands: Required<Done>["commands"], { getters }: GridModel, what: string): string | null {
  const ids = new Set(commands.map(({ sheetId }) => sheetId));
  const names = getters.getSheetIds().filter((id) => ids.has(id)).map((id) => getters.getSheetName(id)); // prettier-ignore
  return names.length === 0 || ids.has(getters.getActiveSheetId()) ? null : `${what} on the sheet ${names.join(", ")}.`;
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
