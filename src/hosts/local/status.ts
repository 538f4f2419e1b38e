import type { CellPosition, GridModel } from "./grid";
import type { GridDesk } from "./gridDesk";
import { offeredIn } from "./offeredWord";
import { nearestFunction, slipIn } from "./slip";
import { stepIn } from "./stepsLead";
import { cutText, toType } from "./tellCell";
import { typedWords } from "./typedWords";
import { isTyping, typedText } from "./typing";

/**
 * What there is to say about a cell: why it shows an error, what of its text is not seen, what to type there, or the note
 * that belongs to it. Empty where there is nothing.
 */
export function cellWords(model: GridModel, position: CellPosition): string {
  const cell = model.getters.getEvaluatedCell(position);
  const at = addressOf(model, position);
  if (cell.type === "error") {
    const origin = cell.errorOriginPosition;
    const elsewhere = origin !== undefined && addressOf(model, origin) !== at;
    const code = String(cell.value);
    return `${at} shows ${code}: ${whyOf(code, cell.message ?? "", elsewhere, model.getters.getCellText(origin ?? position, { showFormula: true }))}${elsewhere ? ` (${addressOf(model, origin)})` : ""}`;
  }
  const step = stepIn(model, position);
  if (step !== null) return `${at}: Enter or a click goes to the sheet ${model.getters.getSheetName(step)}; F2 edits.`;
  const words = [cutText(model, position), toType(model, position)].filter((part) => part !== "");
  return words.length === 0 ? "" : `${at}: ${words.join(" | ")}`;
}

/** An address as the selected sheet would write it. */
function addressOf({ getters }: GridModel, { sheetId, col, row }: CellPosition): string {
  const range = getters.getRangeFromZone(sheetId, { left: col, right: col, top: row, bottom: row });
  return getters.getRangeString(range, getters.getActiveSheetId());
}

/** Why a cell shows an error: the function's own sentence, or ours where the grid's says too little. */
function whyOf(code: string, message: string, elsewhere: boolean, formula: string): string {
  if (code === "#SPILL!") return elsewhere ? SPILL_BLOCKED : SPILL_TOO_LONG;
  if (code === "#BAD_EXPR") return slipIn(formula);
  const unknown = /^Unknown function: "(.+)"$/.exec(message)?.[1];
  if (unknown !== undefined) return unknownWords(unknown);
  if (message !== "") return message;
  return code === "#NUM!" ? "the result is no finite number" : "the formula has no answer";
}

function unknownWords(name: string): string {
  const near = nearestFunction(name, o_spreadsheet.registries.functionRegistry.getKeys());
  return `no function is called ${name}${near === "" ? "" : `; the nearest is ${near}`}`;
}

const SPILL_BLOCKED = "the answer needs several cells, and one of them is filled";
const SPILL_TOO_LONG =
  "the answer needs more cells than there are from here to the edge of the sheet, or some are merged";

/**
 * Keeps a line on the page in step with the sheet: words about what is being typed, else about the selected cell.
 *
 * @param typing words about the formula being typed; empty where none is
 */
export function followSheet(
  { model, follow }: Pick<GridDesk, "model" | "follow">,
  sheet: HTMLElement,
  line: HTMLElement,
  typing: () => string,
): void {
  const show = (): void => {
    const position = model().getters.getActivePosition();
    const words = typing() || (isTyping() ? typingWords(model(), position, sheet) : cellWords(model(), position));
    if (line.textContent !== words) line.textContent = words;
  };
  follow(show);
  new MutationObserver(show).observe(sheet, {
    subtree: true,
    childList: true,
    characterData: true,
    attributeFilter: ["class"],
  });
  show();
}

/** While something is typed in a cell: how its digits are read where that is in doubt, what Tab would take, and what to type there. */
function typingWords(model: GridModel, position: CellPosition, sheet: HTMLElement): string {
  const offered = offeredIn(sheet);
  const tab = offered === null ? "" : `Tab takes "${offered.word}". `;
  const meaning = toType(model, position);
  const words = typedWords(typedText()) + tab + meaning;
  return words === "" ? "" : `${addressOf(model, position)}: ${words}`;
}
