import { DomainError } from "../core/errors";
import { headerName } from "../core/naming/headerName";
import type { Quantity, UnitSystem } from "../reference/quantities";
import type { Cell } from "./cells";
import { requireOwnUnit } from "./ownUnit";

/** The places of the headers that a table has, of those that it may have. */
export function headersOf<Name extends string>(
  argument: string,
  header: readonly Cell[],
  columns: readonly { readonly name: Name; readonly quantity: Quantity | null }[],
  system: UnitSystem,
): ReadonlyMap<Name, number> {
  const names = header.map((cell) => (typeof cell === "string" ? headerName(cell) : ""));
  const found = new Map<Name, number>();
  for (const { name, quantity } of columns) {
    const place = names.indexOf(headerName(name));
    if (place < 0) continue;
    if (names.lastIndexOf(headerName(name)) !== place)
      throw new DomainError(argument, name, "headed by each column once, not twice");
    requireOwnUnit(argument, header[place]!, quantity, system);
    found.set(name, place);
  }
  return found;
}
