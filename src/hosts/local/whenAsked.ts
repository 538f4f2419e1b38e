interface Colors {
  finalize(): void;
  getCustomColors(): string[];
}

interface Positions {
  headerPositions: Record<string, unknown>; // by sheet
  isDirty: boolean;
  finalize(): void;
  computeHeaderPositionsOfSheet(sheetId: string): unknown;
  getColDimensions(sheetId: string, column: number): unknown;
  getRowDimensions(sheetId: string, row: number): unknown;
  getColRowOffset(dimension: string, from: number, to: number, sheetId: string): number;
}

type Plugin<Kind> = new (...args: never[]) => Kind;

/**
 * After each entry the library collects the colors of all cells of all sheets, for the list that offers them, and adds up the widths of
 * all columns and the heights of all rows. Here it does so for whom asks: for the list when it opens, for a sheet when it is shown.
 */
export function whenAsked(): void {
  const { coreViewsPluginRegistry, statefulUIPluginRegistry } = o_spreadsheet.registries;
  const CustomColors = coreViewsPluginRegistry.get("custom_colors") as unknown as Plugin<Colors>;
  class ColorsWhenAsked extends CustomColors {
    override finalize(): void {
      // nothing yet
    }

    override getCustomColors(): string[] {
      super.finalize();
      return super.getCustomColors();
    }
  }
  coreViewsPluginRegistry.replace("custom_colors", ColorsWhenAsked as never);

  const HeaderPositions = statefulUIPluginRegistry.get("header_positions") as unknown as Plugin<Positions>;
  class PositionsWhenAsked extends HeaderPositions {
    override finalize(): void {
      if (this.isDirty) this.headerPositions = {}; // what was asked for amid the change may be of before its end
      this.isDirty = false;
    }

    override getColDimensions(sheetId: string, column: number): unknown {
      this.ask(sheetId);
      return super.getColDimensions(sheetId, column);
    }

    override getRowDimensions(sheetId: string, row: number): unknown {
      this.ask(sheetId);
      return super.getRowDimensions(sheetId, row);
    }

    override getColRowOffset(dimension: string, from: number, to: number, sheetId: string): number {
      this.ask(sheetId);
      return super.getColRowOffset(dimension, from, to, sheetId);
    }

    private ask(sheetId: string): void {
      this.headerPositions[sheetId] ??= this.computeHeaderPositionsOfSheet(sheetId);
    }
  }
  statefulUIPluginRegistry.replace("header_positions", PositionsWhenAsked as never);
}
