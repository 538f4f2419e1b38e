import { MAKER } from "../../sheets/book/summary/summaryLayout";
import type { Workbook } from "../../sheets/workbook";

/** Who made the budget, as its page for the club says it; null where nobody said so, or the cell is no longer that one. */
export function makerOf({ sheets }: Workbook): string | null {
  const cells = sheets.find(({ key }) => key === "summary")?.cells ?? [];
  const said = (at: string): unknown => {
    const cell = cells.find((one) => one.at === at);
    return cell !== undefined && "value" in cell ? cell.value : null;
  };
  const name = said(MAKER.cell);
  return said(MAKER.labelCell) === MAKER.label && typeof name === "string" && name.trim() !== "" ? name.trim() : null;
}
