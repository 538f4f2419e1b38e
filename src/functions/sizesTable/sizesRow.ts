import { sizesColumns, type SizesKey } from "../../reference/answerColumns";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, type Value } from "../answerRows";

/** What stands in some columns of a row of SIZES, in SI. */
export type SizesCells = Readonly<Partial<Record<SizesKey, Value | null>>>;

/** A row of SIZES. Diameters are copied into other cells, so a size is said as it is printed: 3, not 2.9999999999999996. */
export const sizesRow = (of: SizesCells, system: UnitSystem): Value[] =>
  answerRow(sizesColumns, of, system).map((cell) => (typeof cell === "number" ? Number(cell.toPrecision(12)) : cell));
