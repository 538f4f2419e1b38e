import { type FittingItem, parseFittingList } from "../../../core/fittings/fittingList";
import { valuesBehind } from "../../../core/fittings/valuesBehind";
import { DomainError } from "../../../core/errors";
import { findNamed } from "../../../core/naming/findNamed";
import { weakBases } from "../../../reference/citation";
import type { ReferenceRow } from "../../../reference/schema";

/** A value that a book takes from a table by its name. */
export interface NamedValue {
  readonly name: string; // as the table spells it
  readonly weakness: string; // the weak bases that it rests on; "" where all of it was seen in print
}

interface Named extends ReferenceRow {
  readonly aliases: readonly string[];
}

/** The row of a name; a name that the functions refuse stands for no value. */
export function rowNamed(rows: readonly Named[], name: string): NamedValue[] {
  const row = name === "" ? undefined : findNamed(rows, name);
  return row === undefined ? [] : [{ name: row.key, weakness: weakBases([row]) }];
}

/**
 * The fittings of a list.
 *
 * @param inch [m] of a plain diameter in the list
 * @param duct [m] diameter of the duct, where one is known
 * @param beside shape and angle that stand beside the name, as in LOSSCOEFFICIENT
 */
export function fittingsNamed(
  list: string,
  inch: number,
  duct: number | null,
  beside: { readonly shape: number | null; readonly angle: number | null } = { shape: null, angle: null },
): NamedValue[] {
  const items = unlessRefused(() => parseFittingList("fittings", list, inch, "any")) ?? [];
  return items.flatMap((item) => fittingNamed(item, inch, duct, beside));
}

function fittingNamed(
  { family, shape: own, angle: turn }: FittingItem,
  inch: number,
  duct: number | null,
  beside: { readonly shape: number | null; readonly angle: number | null },
): NamedValue[] {
  if (family === null) return [];
  const byDiameter = family.shape?.quantity === "diameter";
  const given = beside.shape === null ? own : byDiameter ? beside.shape * inch : beside.shape;
  const shape = given ?? (byDiameter ? duct : null);
  const angle = beside.angle ?? turn;
  const behind = unlessRefused(() => valuesBehind(family, shape, angle));
  const numbers = [byDiameter ? null : given, angle].filter((part) => part !== null);
  return behind === null ? [] : [{ name: [family.key, ...numbers].join(" "), weakness: weakBases(behind) }];
}

function unlessRefused<Value>(compute: () => Value): Value | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}
