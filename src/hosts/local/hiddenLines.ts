import { columnLetters } from "../../sheets/address";
import type { GridModel } from "./grid";

/** Rows and columns that are hidden, by a filter or by hand, take what was meant for those that are seen. */

type Getters = Pick<GridModel["getters"], "getActiveSheetId" | "isRowHidden" | "isColHidden">;

export interface Zone {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** @param done what was done to them */
export function hiddenWords(getters: Getters, zones: readonly Zone[], done: string): string | null {
  const rows = linesOf(zones.map(({ top, bottom }) => [top, bottom]));
  const columns = linesOf(zones.map(({ left, right }) => [left, right]));
  const words = [hiddenOf(getters, "ROW", rows, done), hiddenOf(getters, "COL", columns, done)];
  return words.filter((said) => said !== null).join(" ") || null;
}

/** In order and each once: the menu clears rows and columns one by one, and zones may lie beside each other. */
function linesOf(stretches: readonly (readonly [number, number])[]): number[] {
  const lines = new Set<number>();
  for (const [first, last] of stretches) for (let line = first; line <= last; line++) lines.add(line);
  return [...lines].sort((one, other) => one - other);
}

const MOST_SHOWN = 3;

function hiddenOf(getters: Getters, dimension: "ROW" | "COL", lines: readonly number[], done: string): string | null {
  const sheetId = getters.getActiveSheetId();
  const isRow = dimension === "ROW";
  const hidden = lines.filter((line) => getters[isRow ? "isRowHidden" : "isColHidden"](sheetId, line));
  if (hidden.length === 0) return null;
  const names = hidden.slice(0, MOST_SHOWN).map((line) => (isRow ? line + 1 : columnLetters(line + 1)));
  const more = hidden.length > MOST_SHOWN ? " and more" : "";
  return `${isRow ? "Rows" : "Columns"} that are hidden were ${done}, too: ${names.join(", ")}${more}. Undo takes that back.`;
}

interface Removal {
  readonly type: string;
  readonly dimension: "ROW" | "COL";
  readonly elements: readonly number[];
}

/** Said before the rows were gone, by the command that removed them. */
const ofRemovals = new WeakMap<object, string | null>();

export const removedHidden = (removal: object): string | null => ofRemovals.get(removal) ?? null;

/** Looks which rows and columns are hidden before they are deleted: the menu counts them in, and nobody sees them go. */
export function lookBeforeRemoval(): void {
  class LookBeforeRemoval extends o_spreadsheet.UIPlugin {
    override beforeHandle(command: { readonly type: string }): void {
      if (command.type !== "REMOVE_COLUMNS_ROWS") return;
      const { dimension, elements } = command as Removal;
      ofRemovals.set(command, hiddenOf(this.getters, dimension, elements, "deleted"));
    }
  }
  o_spreadsheet.registries.featurePluginRegistry.add("look_before_removal", LookBeforeRemoval);
}
