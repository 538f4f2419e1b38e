import {
  offeredTraverses,
  type SizeRange,
  type TraverseRow,
  type TraverseRule,
} from "../../reference/traverseFractions";
import { DomainError } from "../errors";
import { sectionArea } from "../section/section";
import { lastOf } from "../../reference/itemAt";

/**
 * How deep to push the probe at each point of a traverse, from one wall.
 *
 *     depth = fraction x inside diameter (or side)
 *
 * For fully developed flow, many diameters behind the last bend. The plain mean of the readings is then the mean velocity.
 * By "log-Tchebycheff" the diameter is one side of a rectangular duct, and each side has its own points.
 *
 * @param diameter [m] inside, lining deducted; above 0 to 20
 * @param points [-] how many along that line; null takes the source's number for that size
 * @param rule "log-linear" for a round duct, "log-Tchebycheff" for a side of a rectangular one
 * @returns [m] one depth per point, rising
 * @throws DomainError if the diameter is outside its range or the rule has no such number of points
 * @source instrumentManuals appendix on duct traverses; four points are from memory (iso3966)
 */
export function traversePoints(diameter: number, points: number | null, rule: TraverseRule): number[] {
  sectionArea(diameter, null); // refuses what is no diameter
  const rows = offeredTraverses(rule);
  const row = points === null ? usualRow(rows, diameter) : rows.find(({ fractions }) => fractions.length === points);
  if (row === undefined) throw new DomainError("points", points, `${counts(rows)} by the rule "${rule}"`);
  return row.fractions.map((fraction) => fraction * diameter);
}

const usualRow = (rows: readonly TraverseRow[], size: number): TraverseRow | undefined =>
  rows.find(({ usual }) => usual !== null && holds(usual, size));

/**
 * Whether a size lies in a range; a bound that is not told is none.
 *
 * @returns true also at a bound that is "at least" or "at most"
 * @source house
 */
export const holds = ({ above, atLeast, below, atMost }: SizeRange, size: number): boolean =>
  size > (above ?? 0) && size >= (atLeast ?? 0) && size < (below ?? Infinity) && size <= (atMost ?? Infinity);

function counts(rows: readonly TraverseRow[]): string {
  const numbers = rows.map(({ fractions }) => fractions.length);
  return `${numbers.slice(0, -1).join(", ")} or ${lastOf(numbers)}`;
}
