interface Handler {
  isPasteAllowed(sheetId: string, target: unknown, content: object, options: unknown): string;
}

/**
 * Lets a block be pasted, inserted or deleted across the edge of what stands still. The grid refuses that for the sake of
 * merged cells, which it holds together there by a check of its own; a table of runs begins left of that edge, and nobody
 * who pastes one knows of it.
 */
export function pasteAnywhere(): void {
  const { cellHandlers } = o_spreadsheet.registries.clipboardHandlersRegistries;
  const OfSheet = cellHandlers.get("sheet") as unknown as new (...args: never[]) => Handler;
  class AcrossTheEdge extends OfSheet {
    override isPasteAllowed(): string {
      return "Success"; // the edge is all that this handler looks at
    }
  }
  cellHandlers.replace("sheet", AcrossTheEdge as never);
}
