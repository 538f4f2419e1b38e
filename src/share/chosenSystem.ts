import { type Token, tokenize } from "@borgar/fx";
import type { Calculated, ShownCell } from "../sheets/calculated";
import { cellAddress } from "../sheets/address";
import { CALIBRATED, ENTERED } from "../sheets/book/layout";
import { callsOurs } from "../sheets/ourCalls";
import { type RangeRef, readRange } from "../sheets/rangeRef";
import type { Sheet } from "../sheets/workbook";
import { itemAt } from "../reference/itemAt";
import { withFixedNote } from "./marks";

/** A book whose formulas have made their choice between the system as entered and as calibrated. */
export interface Chosen {
  readonly book: Calculated;
  readonly cells: readonly RangeRef[]; // those that say which
  readonly was: (sheet: string, at: string) => string | undefined; // a formula as it stood before
}

/**
 * A copy keeps the side of the choice that its book shows: as entered it recalculates, and what calibration needs is neither in it nor among
 * what makes its numbers old. Formulas of the spreadsheet alone go on reading the cell.
 */
export function withChosenSystem(given: Calculated): Chosen {
  const cells = new Map<string, RangeRef>();
  const was = new Map<string, string>();
  const sheets = given.workbook.sheets.map((sheet): Sheet => {
    const chosen = sheet.cells.map((cell) => {
      if (!("formula" in cell) || !cell.formula.includes(`"${CALIBRATED}"`) || !callsOurs(cell.formula)) return cell;
      const isCalibrated = (reference: string): boolean | null => {
        const range = readRange(reference, sheet.name);
        if (range === null) return null;
        cells.set(reference, range);
        return saysCalibrated(given.shown.get(range.sheet)?.get(cellAddress(range.left, range.top)));
      };
      const formula = chosenIn(cell.formula, isCalibrated);
      if (formula !== cell.formula) was.set(`${sheet.name}!${cell.at}`, cell.formula);
      return { ...cell, formula };
    });
    return was.size === 0 ? sheet : { ...sheet, cells: chosen };
  });
  return {
    book: { ...given, workbook: { ...given.workbook, sheets } },
    cells: [...cells.values()],
    was: (sheet, at) => was.get(`${sheet}!${at}`),
  };
}

/** One formula of a book without its choices, and whether the book shows the system as calibrated. */
export function chosenFormula(
  { shown }: Calculated,
  sheet: string,
  formula: string,
): { readonly formula: string; readonly isCalibrated: boolean } {
  let calibrated = false;
  const chosen = chosenIn(formula, (reference) => {
    const range = readRange(reference, sheet);
    if (range === null) return null;
    return (calibrated ||= saysCalibrated(shown.get(range.sheet)?.get(cellAddress(range.left, range.top))));
  });
  return { formula: chosen, isCalibrated: calibrated };
}

/** As a spreadsheet compares texts. */
export const saysCalibrated = (cell: ShownCell | undefined): boolean =>
  typeof cell?.value === "string" && cell.value.toLowerCase() === CALIBRATED;

/** A formula without its choices: IF(cell="as calibrated",one,other) is one of them. */
export function chosenIn(formula: string, isCalibrated: (reference: string) => boolean | null): string {
  const tokens = tokenize(formula);
  const at = tokens.findIndex((_, index) => choiceAt(tokens, index));
  if (at < 0) return formula;
  const { args, end } = argumentsFrom(tokens, at + 2);
  const side = isCalibrated(itemAt(tokens, at + 2).value);
  if (side === null || args.length !== 3) return formula;
  const text = (some: readonly Token[]): string => some.map(({ value }) => value).join("");
  const kept = itemAt(args, side ? 1 : 2);
  return chosenIn(text(tokens.slice(0, at)) + text(kept) + text(tokens.slice(end + 1)), isCalibrated);
}

const choiceAt = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.type === "func" &&
  tokens[at].value.toUpperCase() === "IF" &&
  tokens[at + 2]?.type === "range" &&
  tokens[at + 3]?.value === "=" &&
  tokens[at + 4]?.value === `"${CALIBRATED}"`;

/** The arguments of a call, from the token behind its bracket to the bracket that closes it. */
function argumentsFrom(tokens: readonly Token[], from: number): { readonly args: Token[][]; readonly end: number } {
  const args: Token[][] = [[]];
  let depth = 0;
  for (let at = from; at < tokens.length; at++) {
    const token = itemAt(tokens, at);
    const isOperator = token.type === "operator";
    if (isOperator && token.value === ")" && depth === 0) return { args, end: at };
    if (isOperator && (token.value === "(" || token.value === "{")) depth++;
    if (isOperator && (token.value === ")" || token.value === "}")) depth--;
    if (isOperator && token.value === "," && depth === 0) args.push([]);
    else args.at(-1)!.push(token);
  }
  return { args: [], end: tokens.length };
}

/** The cell of the choice offers its own word only, and says why. */
export function withFixedChoice(sheet: Sheet, { cells, book }: Chosen): Sheet {
  const here = cells.filter((one) => one.sheet === sheet.name).map(({ left, top }) => cellAddress(left, top));
  if (here.length === 0) return sheet;
  const shown = book.shown.get(sheet.name);
  const isCalibrated = here.some((at) => saysCalibrated(shown?.get(at)));
  const [word, sentence] = isCalibrated
    ? [CALIBRATED, "what flows was computed by the readings of its day, and is struck out once it is old."]
    : [
        ENTERED,
        "what flows goes by what is typed on Runs and Fan. A copy calibrates nothing, so another word here changes no number.",
      ];
  return {
    ...sheet,
    lists: sheet.lists.map((list) => (here.includes(list.range) ? { ...list, choices: [word], strict: true } : list)),
    cells: sheet.cells.map((cell) => (here.includes(cell.at) ? withFixedNote(cell, sentence) : cell)),
  };
}
