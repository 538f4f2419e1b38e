import type { CellBlock, WriteOutcome } from "../host";
import { contentOf } from "./content";
import type { GridModel } from "./grid";

/** Our own command: many cells are written in one step, which one undo takes back. */
const WRITE = "WRITE_CELLS";

interface WriteCommand {
  readonly type: typeof WRITE;
  readonly cells: readonly {
    readonly sheetId: string;
    readonly col: number;
    readonly row: number;
    readonly content: string;
  }[];
}

/** Writes values into cells, or none of them where a sheet or a cell is not there. */
export function writeBlocks(model: GridModel, blocks: readonly CellBlock[]): WriteOutcome {
  const { getters } = model;
  const cells: WriteCommand["cells"][number][] = [];
  for (const { sheet, at, rows } of blocks) {
    const sheetId = getters.getSheetIdByName(sheet);
    if (sheetId === undefined) return { written: false, why: `There is no sheet called ${sheet} any more.` };
    const { col, row } = o_spreadsheet.helpers.toCartesian(at);
    const { numberOfCols, numberOfRows } = getters.getSheetSize(sheetId);
    if (row + rows.length > numberOfRows || rows.some((line) => col + line.length > numberOfCols))
      return { written: false, why: `The sheet ${sheet} is too small for what was to be written.` };
    rows.forEach((line, down) =>
      line.forEach((value, along) =>
        cells.push({ sheetId, col: col + along, row: row + down, content: contentOf({ value }) }),
      ),
    );
  }
  model.dispatch(WRITE as never, { cells } as never);
  return { written: true };
}

export function addWritePlugin(): void {
  class WritePlugin extends o_spreadsheet.UIPlugin {
    override handle(command: { readonly type: string }): void {
      if (command.type !== WRITE) return;
      for (const cell of (command as WriteCommand).cells) this.dispatch("UPDATE_CELL", cell); // refused only where it changes nothing
    }
  }
  o_spreadsheet.registries.featurePluginRegistry.add("write_cells", WritePlugin);
}
