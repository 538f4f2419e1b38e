import { DomainError } from "../core/errors";
import { headerName } from "../core/naming/headerName";
import { isMisspelt } from "../core/naming/isMisspelt";
import { type Quantity, type UnitSystem, unitOf } from "../reference/quantities";
import { factorOfTyped } from "../reference/typedUnit";
import { isNothing, type Matrix } from "./cells";
import { requireOwnUnit } from "./ownUnit";

interface Column<Name extends string> {
  readonly name: Name;
  readonly quantity: Quantity | null;
}

/**
 * The places of the headers that a table has in its first row, of those that it may have. Other headers are the user's own, but none is a
 * misspelt one, or was cleared between others: its column would be left out without a word.
 *
 * @throws DomainError where one stands twice, is misspelt, is blank over a filled column or tells another unit
 */
export function headersOf<Name extends string>(
  argument: string,
  [header = [], ...body]: Matrix,
  columns: readonly Column<Name>[],
  system: UnitSystem,
): ReadonlyMap<Name, number> {
  const names = header.map((cell) => (typeof cell === "string" ? headerName(cell) : ""));
  const own = new Set(columns.map(({ name }) => headerName(name)));
  const found = new Map<Name, number>();
  for (const { name, quantity } of columns) {
    const wanted = headerName(name);
    const place = names.indexOf(wanted);
    if (place < 0) {
      const slip = names.findIndex((one) => !own.has(one) && isMeant(one.replace(HOSE, "flex"), wanted, quantity));
      if (slip < 0) continue;
      throw new DomainError(`a header of ${argument}`, header[slip], `spelt "${name}", a unit in brackets, or another word if it is your own`); // prettier-ignore
    }
    if (names.lastIndexOf(wanted) !== place)
      throw new DomainError(argument, name, "headed by each column once, not twice");
    if (wanted === "leak" && /open\b(?! area)|shut|closed/i.test(header[place] as string))
      throw new DomainError(`a header of ${argument}`, header[place]!, 'spelt "Leak open" or "Leak shut"'); // one in brackets counts in both
    requireOwnUnit(argument, header[place]!, quantity, system);
    found.set(name, place);
  }
  const isHeaded = (name: string): boolean => name !== "";
  const bare = names.findIndex(
    (name, place) =>
      !isHeaded(name) &&
      (isNothing(header[place]!) || typeof header[place] === "string") &&
      names.slice(0, place).some(isHeaded) &&
      names.slice(place).some(isHeaded) &&
      body.some((row) => !isNothing(row[place] ?? null)),
  );
  if (bare >= 0) throw new DomainError(argument, null, `headed in each column that is filled (column ${bare + 1} is not)`); // prettier-ignore
  return found;
}

/** What many call Flex. */
const HOSE = /^(flex )?hose( length)?|^flex length/;

const isMeant = (name: string, wanted: string, quantity: Quantity | null): boolean =>
  isMisspelt(name, wanted) || hasUnit(name, wanted, quantity);

/** A unit behind the name without brackets: "Length ft", "Length, in ft", but inches in "Device loss in wg". */
const hasUnit = (name: string, wanted: string, quantity: Quantity | null): boolean =>
  quantity !== null &&
  name.startsWith(wanted) &&
  factorOfTyped(
    name.slice(wanted.length).replace(/^[ ,:]+(in (?![who]))?/, ""),
    quantity,
    unitOf(quantity, "IP").label,
  ) !== undefined;
