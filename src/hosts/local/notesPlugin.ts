import type { CellPosition, GridModel } from "./grid";

interface Note {
  readonly range: NoteRange;
  readonly note: string;
}

type NoteRange = ReturnType<GridModel["getters"]["getRangeFromSheetXC"]>;

/** Changes that the grid makes to ranges when rows and columns come and go. */
interface RangeChanges {
  readonly applyChange: (range: NoteRange) => { readonly changeType: string; readonly range: NoteRange };
}

/** The grid's data, with our notes in it. */
type GridData = ReturnType<GridModel["exportData"]>;
type DataWithNotes = GridData & { cellNotes?: readonly { readonly range: string; readonly note: string }[] };

/** Notes that belong to cells: the grid knows none, so this keeps them beside it and moves them with their cells. */
export function addNotesPlugin(): void {
  class CellNotesPlugin extends o_spreadsheet.CorePlugin {
    static override getters = ["getCellNote"];
    notes: readonly Note[] = [];

    override adaptRanges({ applyChange }: RangeChanges): void {
      const changes = this.notes.map((note) => ({ note, change: applyChange(note.range) }));
      if (changes.every(({ change }) => change.changeType === "NONE")) return;
      const kept = changes.filter(({ change }) => change.changeType !== "REMOVE");
      const moved = kept.map(({ note, change }) =>
        change.changeType === "NONE" ? note : { ...note, range: change.range },
      );
      (this.history.update as (key: string, value: unknown) => void)("notes", moved);
    }

    getCellNote({ sheetId, col, row }: CellPosition): string | undefined {
      return this.notes.find(
        ({ range }) => range.sheetId === sheetId && range.zone.left === col && range.zone.top === row,
      )?.note;
    }

    override import(data: GridData): void {
      const { cellNotes } = data as DataWithNotes;
      this.notes = (cellNotes ?? []).map(({ range, note }) => ({
        range: this.getters.getRangeFromSheetXC(this.getters.getSheetIds()[0], range),
        note,
      }));
    }

    override export(data: GridData): void {
      (data as DataWithNotes).cellNotes = this.notes.map(({ range, note }) => ({
        range: this.getters.getRangeString(range, ""),
        note,
      }));
    }
  }
  o_spreadsheet.registries.corePluginRegistry.add("cell_notes", CellNotesPlugin);
}
