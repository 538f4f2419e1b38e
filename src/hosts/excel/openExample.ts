import type { SheetOrder } from "../../sheets/book/order";
import { sheetKeys } from "../../sheets/sheetKeys";
import type { UnitSystem } from "../../reference/quantities";
import type { AddOutcome } from "../host";
import { sentenceOf } from "./faults";
import { readBook } from "./readBook";

const NOT_BLANK =
  "The example would mix with what is in this workbook, so nothing was added. Open a blank workbook (File › New), and show the example there.";

/** The example, in a workbook that is still blank. */
export async function openExample(
  units: UnitSystem,
  add: (order: SheetOrder) => Promise<AddOutcome>,
): Promise<AddOutcome> {
  try {
    const { workbook } = await readBook();
    if (workbook.sheets.some(({ cells }) => cells.some((cell) => "formula" in cell || cell.value !== null)))
      return { added: false, why: NOT_BLANK };
  } catch (fault) {
    return { added: false, why: `${sentenceOf(fault)} Nothing was added.` };
  }
  return add({ units, sheets: sheetKeys, contents: "example" });
}
