import { DomainError, type Limits } from "../../core/errors";
import { DUCT_SIZE } from "../../core/section/section";
import { itemAt } from "../../reference/itemAt";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { stockDiameters } from "../../reference/tradeSizes";
import { readWithin } from "../arguments";
import { type Cell, isWords, toMatrix } from "../cells";

/** A size that one can buy. */
export interface StockSize {
  readonly diameter: number; // [m]
  readonly price: number; // for a foot or a metre of it; its diameter in inches or mm where none is told
}

const MOST_SIZES = 40;
const FROM_ZERO: Limits = { atLeast: 0 };

/**
 * The sizes that one can buy, the narrowest first: a column of diameters, and in a second one the price of a foot (SI: of a
 * metre). Left out, they are the trade's sizes from half of the narrowest present run to one and a half times the widest.
 *
 * @param present [m] diameters of the runs
 * @throws DomainError that names the row
 */
export function readStock(given: unknown, present: readonly number[], system: UnitSystem): StockSize[] {
  const unit = unitOf("diameter", system);
  const matrix = toMatrix(given);
  const isBlank = (line: readonly Cell[]): boolean => line.every((cell) => cell === null || cell === 0);
  if (matrix.every(isBlank)) {
    const [least, greatest] = [Math.min(...present) / 2, Math.max(...present) * 1.5];
    return stockDiameters(system)
      .filter((diameter) => diameter >= least && diameter <= greatest)
      .map((diameter) => ({ diameter, price: fromSI(diameter, unit) }));
  }
  const width = itemAt(matrix, 0).length;
  if (width > 2)
    throw new DomainError(
      "stock",
      `${matrix.length} by ${width} cells`,
      "one column of diameters, or two with a price",
    );
  // a column of prices in which nothing stands is none: the sheet Sizes has a place for them
  const isPriced = matrix.some(
    ([, price], row) => price !== undefined && !isBlank([price]) && (row > 0 || typeof price === "number"),
  );
  const first = itemAt(matrix, 0);
  const isHeading =
    first.some(isWords) && first.every((cell) => typeof cell === "string" && !Number.isFinite(Number(cell)));
  const sizes = matrix.flatMap((line, row): StockSize[] => {
    if (isBlank(line) || (row === 0 && isHeading)) return [];
    const said = `in row ${row + 1} of the stock`;
    const diameter = readWithin(`diameter ${said}`, itemAt(line, 0), "diameter", DUCT_SIZE, system);
    const price = isPriced ? readWithin(`price ${said}`, itemAt(line, 1), "ratio", FROM_ZERO, system) : fromSI(diameter, unit); // prettier-ignore
    return [{ diameter, price }];
  });
  sizes.sort((a, b) => a.diameter - b.diameter);
  const twice = sizes.find(({ diameter }, place) => place > 0 && diameter === itemAt(sizes, place - 1).diameter);
  if (twice !== undefined) throw new DomainError("stock", fromSI(twice.diameter, unit), "diameters that stand once");
  if (sizes.length === 0 || sizes.length > MOST_SIZES)
    throw new DomainError("stock", sizes.length, `from 1 to ${MOST_SIZES} diameters`);
  return sizes;
}
