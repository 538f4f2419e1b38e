import { aboutVersion } from "../reference/aboutVersion";
import { cellAddress, placeOf } from "./address";
import type { Calculated } from "./calculated";
import { ourCallsIn } from "./ourCalls";

/** An answer of ABOUT: the version that computed it, and where. */
export interface AboutAnswer {
  readonly sheet: string;
  readonly at: string; // the cell of the formula
  readonly version: string;
  readonly versionAt: string;
}

/** Which version computed each answer of ABOUT that a workbook shows. */
export const aboutVersions = ({ workbook, shown }: Calculated): AboutAnswer[] =>
  workbook.sheets.flatMap(({ name: sheet, cells }) =>
    cells.flatMap((cell): AboutAnswer[] => {
      if (!("formula" in cell) || !ourCallsIn(cell.formula).includes("ABOUT")) return [];
      const { column, row } = placeOf(cell.at);
      const [what, word, version] = [0, 1, 2].map(
        (right) => shown.get(sheet)?.get(cellAddress(column + right, row))?.value,
      );
      if (what !== aboutVersion[0] || word !== aboutVersion[1] || typeof version !== "string") return [];
      return [{ sheet, at: cell.at, version, versionAt: cellAddress(column + 2, row) }];
    }),
  );
