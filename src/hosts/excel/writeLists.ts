import { fitsRule } from "../../sheets/longLists";
import { asPrompt, HINT_TITLE } from "../../sheets/prompts";
import { rectangleText } from "../../sheets/rectangle";
import type { ChoiceList, Sheet } from "../../sheets/workbook";
import { asLiteral } from "./literal";

const PROMPT_TITLE = "About this cell"; // at most 32

/** Choices that do not fit into a rule stand in the columns of a sheet of their own, which Excel does not show. */
export const longLists = (sheets: readonly Sheet[]): readonly (readonly string[])[] => [
  ...new Map(
    sheets
      .flatMap(({ lists }) => lists)
      .filter(({ choices }) => !fitsRule(choices))
      .map(({ choices }) => [JSON.stringify(choices), choices]),
  ).values(),
];

/** Fills the sheet of long lists, a column each. */
export function writeLongLists({ sheet, lists }: LongLists): void {
  lists.forEach((choices, index) => {
    sheet.getRange(columnOf(choices, index)).values = choices.map((choice) => [asLiteral(choice)]);
  });
}

const columnOf = (choices: readonly string[], index: number): string =>
  rectangleText({ top: 1, left: index + 1, bottom: choices.length, right: index + 1 });

export interface LongLists {
  readonly sheet: Excel.Worksheet;
  readonly lists: readonly (readonly string[])[];
}

/** Drop-downs. A list that only suggests lets everything else pass. */
export function writeLists(sheet: Excel.Worksheet, lists: readonly ChoiceList[], long: LongLists | null): void {
  for (const { range, choices, strict } of lists) {
    const { dataValidation } = sheet.getRange(range);
    dataValidation.rule = { list: { inCellDropDown: true, source: sourceOf(choices, long) } };
    dataValidation.ignoreBlanks = true;
    dataValidation.errorAlert = {
      showAlert: strict,
      style: "Stop",
      title: "Not in the list",
      message: "Choose one of the words of the list.",
    };
  }
}

function sourceOf(choices: readonly string[], long: LongLists | null): string | Excel.Range {
  const key = JSON.stringify(choices);
  const index = long?.lists.findIndex((list) => JSON.stringify(list) === key) ?? -1;
  return long === null || index === -1 ? choices.join(",") : long.sheet.getRange(columnOf(choices, index));
}

/**
 * The explanation of a cell, and what to type into others, shown while they are selected. Excel's own notes would need
 * ExcelApi 1.18, which no perpetual Excel up to 2024 has; an input message shows in all of them and needs no rule.
 */
export function writePrompts(sheet: Excel.Worksheet, { cells, hints = [] }: Sheet): void {
  const write = (at: string, title: string, text: string): void => {
    sheet.getRange(at).dataValidation.prompt = { showPrompt: true, title, message: asPrompt(text) };
  };
  for (const { range, text } of hints) write(range, HINT_TITLE, text);
  for (const { at, note } of cells) if (note !== undefined) write(at, PROMPT_TITLE, note);
}
