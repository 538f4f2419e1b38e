import type { CellPosition } from "./grid";
import { textContent } from "./content";

/** A cell that was copied here; or one of a text that came from another program, which holds that text alone. */
interface Copied {
  readonly content?: string;
  readonly evaluatedCell: { readonly type?: string; readonly value?: unknown };
}

interface Handler {
  readonly dispatch: (type: "UPDATE_CELL", cell: CellPosition & { readonly content: string }) => unknown;
  pasteCell(origin: Copied, target: CellPosition, options?: { readonly pasteOption?: string }): void;
  convertTextToClipboardData(text: string): unknown;
}

/**
 * Pastes the value of a text as that text. The grid enters it as if it were typed, so that a text with "=" before it became a formula,
 * and "5/6" a day. And what comes from another program counts as typed into the cells: the grid took their look and number format away,
 * and pasted blanks where values were asked for.
 */
export function pasteValues(): void {
  const { cellHandlers } = o_spreadsheet.registries.clipboardHandlersRegistries;
  const OfCells = cellHandlers.get("cell") as unknown as new (...args: never[]) => Handler;
  class TextAsText extends OfCells {
    /** A spreadsheet ends its last row with a new line, too, of which the grid made a blank row more: it emptied the row below. */
    override convertTextToClipboardData(text: string): unknown {
      return super.convertTextToClipboardData(text.replace(/\r?\n$/, ""));
    }

    override pasteCell(origin: Copied, target: CellPosition, options?: { readonly pasteOption?: string }): void {
      const { type, value } = origin.evaluatedCell;
      const asValue = options?.pasteOption === "asValue";
      if (type === undefined) {
        const content = origin.content ?? "";
        const isCode = asValue && content.startsWith("=");
        if (options?.pasteOption !== "onlyFormat")
          this.dispatch("UPDATE_CELL", { ...target, content: isCode ? textContent(content) : content });
      } else if (asValue && type === "text" && typeof value === "string" && value !== "")
        this.dispatch("UPDATE_CELL", { ...target, content: textContent(value) });
      else super.pasteCell(origin, target, options);
    }
  }
  cellHandlers.replace("cell", TextAsText as never);
}
