import { eitherWay } from "../../sheets/eitherWay";
import { hasDecimalComma } from "./days";

interface Done {
  readonly type: string;
  readonly clipboardContent?: { readonly text?: string };
}

const MERGED =
  "Merged cells: formulas read what the first of them holds, and the others are blank to them. Save and a reload keep the cells, not their merging.";

/** What must be said right after something was done, since no cell says it; null where nothing must. */
export function toldAfter({ type, clipboardContent }: Done): string | null {
  if (type === "ADD_MERGE") return MERGED;
  return type === "PASTE_FROM_OS_CLIPBOARD" ? pastedWords(clipboardContent?.text ?? "") : null;
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
