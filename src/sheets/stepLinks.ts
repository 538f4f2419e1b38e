import type { Workbook } from "./workbook";

/** A step of the sheet Start, and the sheet that it is about. */
export interface StepLink {
  readonly at: string;
  readonly sheet: string;
}

/** The sheet that a line of the sheet Start begins with the name of, as in "2. Runs"; null for any other text. */
export function sheetOfStep(text: unknown, sheets: readonly string[]): string | null {
  const named = /^(?:\d+\. |To look up: )(.+)$/.exec(typeof text === "string" ? text : "")?.[1];
  return sheets.find((name) => name === named) ?? null;
}

/** The steps of a sheet Start that lead to another sheet of the book. A sheet that has another name now is none of them. */
export function stepLinks({ sheets }: Workbook, place: number): StepLink[] {
  const start = sheets[place];
  if (start?.key !== "start") return [];
  const others = sheets.filter((sheet) => sheet !== start).map(({ name }) => name);
  return start.cells.flatMap((cell) => {
    const sheet = "value" in cell && /^A\d+$/.test(cell.at) ? sheetOfStep(cell.value, others) : null;
    return sheet === null ? [] : [{ at: cell.at, sheet }];
  });
}
