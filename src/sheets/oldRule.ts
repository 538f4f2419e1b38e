import { CHANGED } from "./workbook";

/** The condition of a rule that strikes cells out, for the first of them; what a host reads back as an old mark. */
export const oldRule = (state: string, first: string): string => `AND(${state}="${CHANGED}",${first}<>"")`;

/** The cell that such a condition goes by; null where it is another one. */
export const stateOfOldRule = (condition: string): string | null =>
  PATTERN.exec(condition.replace(/^=/, ""))?.[1]?.toUpperCase() ?? null;

const PATTERN = new RegExp(`^AND\\((\\$[A-Z]{1,3}\\$\\d+)="${CHANGED}",[A-Z]{1,3}\\d+<>""\\)$`, "i");
