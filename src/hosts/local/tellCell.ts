import type { CellPosition, GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";

const MOST_WORDS = 8; // of a list that are read out

/** What to type into a cell: what its column means, and the words that it offers where that does not name them. */
export function toType(model: GridModel, position: CellPosition): string {
  const meaning = keptGetters(model).getCellHint(position) ?? keptGetters(model).getCellNote(position) ?? "";
  const choices = choicesOf(model, position).filter((choice) => !namesWord(meaning, choice));
  if (choices.length === 0) return meaning;
  const named = choices.slice(0, MOST_WORDS).join("; ");
  const more = choices.length > MOST_WORDS ? `; and ${choices.length - MOST_WORDS} more as you type` : "";
  return `${meaning} Offered: ${named}${more}.`.trimStart();
}

function choicesOf({ getters }: GridModel, position: CellPosition): readonly string[] {
  const criterion = getters.getValidationRuleForCell(position)?.criterion;
  return criterion?.type === "isValueInList" ? criterion.values.map(String) : [];
}

const namesWord = (text: string, word: string): boolean => ` ${text.replace(/[,;.:]/g, " ")} `.includes(` ${word} `);

/** The text of a cell that is wider than its column; empty where all of it is seen. */
export function cutText({ getters }: GridModel, position: CellPosition): string {
  const { type, formattedValue } = getters.getEvaluatedCell(position);
  const isCut = type === "text" && getters.getCellWidth(position) > getters.getColSize(position.sheetId, position.col);
  return isCut ? formattedValue : "";
}
