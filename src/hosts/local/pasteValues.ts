import type { CellPosition } from "./grid";
import { textContent } from "./content";

interface Copied {
  readonly evaluatedCell: { readonly type: string; readonly value: unknown };
}

interface Handler {
  readonly dispatch: (type: "UPDATE_CELL", cell: CellPosition & { readonly content: string }) => unknown;
  pasteCell(origin: Copied, target: CellPosition, options?: { readonly pasteOption?: string }): void;
}

/**
 * Pastes the value of a text as that text. The grid enters it as if it were typed, so that a text with "=" before it became a formula,
 * and "5/6" a day.
 */
export function pasteValues(): void {
  const { cellHandlers } = o_spreadsheet.registries.clipboardHandlersRegistries;
  const OfCells = cellHandlers.get("cell") as unknown as new (...args: never[]) => Handler;
  class TextAsText extends OfCells {
    override pasteCell(origin: Copied, target: CellPosition, options?: { readonly pasteOption?: string }): void {
      const { type, value } = origin.evaluatedCell;
      if (options?.pasteOption === "asValue" && type === "text" && typeof value === "string" && value !== "")
        this.dispatch("UPDATE_CELL", { ...target, content: textContent(value) });
      else super.pasteCell(origin, target, options);
    }
  }
  cellHandlers.replace("cell", TextAsText as never);
}
