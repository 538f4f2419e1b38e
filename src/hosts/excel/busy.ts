import type { Calculated } from "../../sheets/calculated";
import { sheetPrefix } from "../../sheets/sheetPrefix";

const BUSY: readonly unknown[] = ["#BUSY!", "#GETTING_DATA"]; // the second is what older builds show

/** Whether a cell shows that its function has not answered yet. */
export const isBusy = (shown: unknown): boolean => BUSY.includes(shown);

export const PAUSE = 500; // ms between two looks at cells that are busy
export const BUSY_TURNS = 20;

/** The first cell whose function has not answered yet; null where none waits. */
export function firstBusy({ shown }: Pick<Calculated, "shown">): string | null {
  for (const [sheet, cells] of shown)
    for (const [at, { value }] of cells)
      if (typeof value === "object" && isBusy(value?.message)) return `${sheetPrefix(sheet)}${at}`;
  return null;
}
