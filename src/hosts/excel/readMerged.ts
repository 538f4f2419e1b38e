import type { Extent } from "../../sheets/calculated";
import { cellAddress } from "../../sheets/address";
import { columnsOf, rowsOf } from "../../sheets/rectangle";
import { rectangleAt } from "./rangeAt";

/** Merged cells by the address of the first, which alone holds what they show. An Excel before ExcelApi 1.13 tells of none. */
export async function readMerged(context: Excel.RequestContext, used: Excel.Range): Promise<Map<string, Extent>> {
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.13")) return new Map();
  const areas = used.getMergedAreasOrNullObject();
  areas.load("address");
  await context.sync();
  const merged = areas.isNullObject ? [] : areas.address.split(",").flatMap((one) => rectangleAt(one) ?? []);
  return new Map(merged.map((area) => [cellAddress(area.left, area.top), { rows: rowsOf(area), columns: columnsOf(area) }])); // prettier-ignore
}
