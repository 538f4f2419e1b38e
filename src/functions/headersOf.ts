import { DomainError } from "../core/errors";
import { headerName } from "../core/naming/headerName";
import type { Cell } from "./cells";

/** The places of the headers that a table has, of those that it may have. */
export function headersOf<Name extends string>(
  argument: string,
  header: readonly Cell[],
  columns: readonly { readonly name: Name }[],
): ReadonlyMap<Name, number> {
  const names = header.map((cell) => (typeof cell === "string" ? headerName(cell) : ""));
  const found = new Map<Name, number>();
  for (const { name } of columns) {
    const place = names.indexOf(headerName(name));
    if (place < 0) continue;
    if (names.lastIndexOf(headerName(name)) !== place)
      throw new DomainError(argument, name, "headed by each column once, not twice");
    found.set(name, place);
  }
  return found;
}
