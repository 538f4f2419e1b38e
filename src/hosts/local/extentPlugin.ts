import { MOST_AREA, MOST_COLUMNS, MOST_ROWS } from "../../sheets/extent";

/** Why the grid refuses to add rows or columns. */
const TOO_FAR = "TooFar";

const words = (most: number): string => most.toLocaleString("en");

export const TOO_FAR_WORDS = `A sheet here has at most ${words(MOST_ROWS)} rows, ${words(MOST_COLUMNS)} columns and ${words(MOST_AREA)} cells, so no more were added.`;

interface AddHeaders {
  readonly type: string;
  readonly sheetId: string;
  readonly dimension: "ROW" | "COL";
  readonly quantity: number;
}

/** Whether a command was refused because its sheet would grow too far. */
export const isTooFar = (rejected: object): boolean =>
  (rejected as { readonly result: { readonly reasons: readonly string[] } }).result.reasons.includes(TOO_FAR);

/** Lets a sheet grow by hand no farther than it could be opened again. */
export function addExtentPlugin(): void {
  class ExtentPlugin extends o_spreadsheet.CorePlugin {
    override allowDispatch(command: { readonly type: string }) {
      if (command.type !== "ADD_COLUMNS_ROWS") return "Success" as never;
      const { sheetId, dimension, quantity } = command as AddHeaders;
      const rows = this.getters.getNumberRows(sheetId) + (dimension === "ROW" ? quantity : 0);
      const columns = this.getters.getNumberCols(sheetId) + (dimension === "COL" ? quantity : 0);
      const fits = rows <= MOST_ROWS && columns <= MOST_COLUMNS && rows * columns <= MOST_AREA;
      return (fits ? "Success" : TOO_FAR) as never;
    }
  }
  o_spreadsheet.registries.corePluginRegistry.add("extent", ExtentPlugin);
}
