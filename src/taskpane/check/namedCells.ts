import { findNamed, rowOf } from "../../core/naming/findNamed";
import type { TransportRow } from "../../reference/schema";
import type { UnitSystem } from "../../reference/quantities";
import { DEFAULT_DUST, transport } from "../../reference/transport";
import type { Calculated } from "../../sheets/calculated";
import { type ShownValue, textIn } from "./tablesIn";

/** What the cell of that name shows; null where a book has none. */
export function shownByName({ workbook, shown }: Calculated, wanted: string): ShownValue {
  const named = workbook.names.find(({ name }) => name.toLowerCase() === wanted);
  return named === undefined ? null : (shown.get(named.sheet)?.get(named.at)?.value ?? null);
}

/** The material that the ducts of a book carry: that of its named cell dust, else the functions' own default. */
export const dustOfBook = (book: Calculated): TransportRow =>
  findNamed(transport, textIn(shownByName(book, "dust"))) ?? rowOf(transport, DEFAULT_DUST);

/** What the cell named units says; null where a book has none that says either. */
export function unitsOfBook(book: Calculated): UnitSystem | null {
  const said = shownByName(book, "units");
  return said === "SI" || said === "IP" ? said : null;
}
