import type { SheetKey } from "../../sheets/sheetKeys";
import type { PrintSetup } from "../../sheets/workbook";
import type { CellPosition, GridModel } from "./grid";

/** What belongs to cells and the grid knows nothing of: it moves with them. */
export interface Fact {
  readonly range: string; // with its sheet
  readonly kind:
    "note" | "hint" | "table name" | "print area" | "title rows" | "title columns" | "page row" | "page column";
  readonly text?: string; // the note, the hint or the name
}

export type Paper = Pick<PrintSetup, "paper" | "landscape" | "pagesWide" | "pagesHigh"> & {
  readonly scale?: number; // of a sheet that is shared out by its maker
};

/** What a workbook has beside what the grid holds. Papers and keys go by the sheet's id. */
export interface Kept {
  readonly title: string;
  readonly facts: readonly Fact[];
  readonly papers: Readonly<Record<string, Paper>>;
  readonly keys: Readonly<Record<string, SheetKey>>;
}

interface PlacedFact extends Omit<Fact, "range"> {
  readonly range: GridRange;
}

type GridRange = ReturnType<GridModel["getters"]["getRangeFromSheetXC"]>;

/** Changes that the grid makes to ranges when rows and columns come and go. */
interface RangeChanges {
  readonly applyChange: (range: GridRange) => { readonly changeType: string; readonly range: GridRange };
}

/** The grid's data, with ours in it. */
type GridData = ReturnType<GridModel["exportData"]> & { kept?: Kept };

/** Our own command: it can be undone like the grid's. */
export const KEEP = "KEEP_FACTS";
interface KeepCommand {
  readonly facts: readonly Fact[];
  readonly papers: Readonly<Record<string, Paper>>;
  readonly keys: Readonly<Record<string, SheetKey>>;
}

interface KeptGetters {
  getCellNote(position: CellPosition): string | undefined;
  getCellHint(position: CellPosition): string | undefined;
  getKeptFacts(): readonly PlacedFact[];
  getPaper(sheetId: string): Paper | undefined;
  getSheetKey(sheetId: string): SheetKey | undefined;
  getBookTitle(): string;
}

export const keptGetters = (model: Pick<GridModel, "getters">): KeptGetters => model.getters as unknown as KeptGetters;

/** Keeps beside the grid what it cannot hold itself: notes, what to type, names of tables, how sheets are printed, the book's title. */
export function addKeptPlugin(): void {
  class KeptPlugin extends o_spreadsheet.CorePlugin {
    static override getters = ["getCellNote", "getCellHint", "getKeptFacts", "getPaper", "getSheetKey", "getBookTitle"];
    facts: readonly PlacedFact[] = [];
    papers: Readonly<Record<string, Paper>> = {};
    keys: Readonly<Record<string, SheetKey>> = {};
    title = "";

    override adaptRanges({ applyChange }: RangeChanges): void {
      const changes = this.facts.map((fact) => ({ fact, change: applyChange(fact.range) }));
      if (changes.every(({ change }) => change.changeType === "NONE")) return;
      const kept = changes.filter(({ change }) => change.changeType !== "REMOVE");
      this.change({
        facts: kept.map(({ fact, change }) => (change.changeType === "NONE" ? fact : { ...fact, range: change.range })),
      });
    }

    override handle(command: { readonly type: string }): void {
      if (command.type === KEEP) {
        const { facts, papers, keys } = command as unknown as KeepCommand;
        this.change({
          facts: [...this.facts, ...facts.map(this.placed)],
          papers: { ...this.papers, ...papers },
          keys: { ...this.keys, ...keys },
        });
      } else if (command.type === "DUPLICATE_SHEET") {
        const { sheetId, sheetIdTo } = command as unknown as { sheetId: string; sheetIdTo: string };
        const copied = this.facts.filter(({ range, kind }) => range.sheetId === sheetId && kind !== "table name");
        const paper = this.papers[sheetId];
        this.change({
          facts: [
            ...this.facts,
            ...copied.map((fact) => ({
              ...fact,
              range: this.getters.getRangeFromZone(sheetIdTo, fact.range.unboundedZone),
            })),
          ],
          ...(paper === undefined ? {} : { papers: { ...this.papers, [sheetIdTo]: paper } }),
        });
      }
    }

    getCellNote({ sheetId, col, row }: CellPosition): string | undefined {
      return this.facts.find(
        ({ range, kind }) =>
          kind === "note" && range.sheetId === sheetId && range.zone.left === col && range.zone.top === row,
      )?.text;
    }

    /** What to type into a cell. */
    getCellHint({ sheetId, col, row }: CellPosition): string | undefined {
      return this.facts.find(
        ({ range: { sheetId: on, zone }, kind }) =>
          kind === "hint" &&
          on === sheetId &&
          zone.left <= col &&
          col <= zone.right &&
          zone.top <= row &&
          row <= zone.bottom,
      )?.text;
    }

    getKeptFacts = (): readonly PlacedFact[] => this.facts;
    getPaper = (sheetId: string): Paper | undefined => this.papers[sheetId];
    getSheetKey = (sheetId: string): SheetKey | undefined => this.keys[sheetId];
    getBookTitle = (): string => this.title;

    override import(data: GridData): void {
      this.title = data.kept?.title ?? "";
      this.papers = data.kept?.papers ?? {};
      this.keys = data.kept?.keys ?? {};
      this.facts = (data.kept?.facts ?? []).map(this.placed);
    }

    override export(data: GridData): void {
      data.kept = {
        title: this.title,
        papers: this.papers,
        keys: this.keys,
        facts: this.facts.map((fact) => ({ ...fact, range: this.getters.getRangeString(fact.range, "") })),
      };
    }

    private placed = (fact: Fact): PlacedFact => ({
      ...fact,
      range: this.getters.getRangeFromSheetXC(this.getters.getSheetIds()[0], fact.range),
    });

    private change(changes: Partial<Pick<KeptPlugin, "facts" | "papers" | "keys">>): void {
      const history = this.history as unknown as { update: (key: string, value: unknown) => void };
      for (const [key, value] of Object.entries(changes)) history.update(key, value);
    }
  }
  (o_spreadsheet.coreTypes as Set<string>).add(KEEP);
  o_spreadsheet.registries.inverseCommandRegistry.add(KEEP, (command) => [command]);
  o_spreadsheet.registries.corePluginRegistry.add("kept", KeptPlugin);
}
