import { DEGREES, SHARP } from "../../reference/zeroWords";
import { DomainError } from "../errors";
import { type FittingItem, listCoefficient } from "./fittingList";
import { lossCoefficient } from "./lossCoefficient";

/** A shape or an angle that stands beside a fitting's name; null where none is given. */
export type Beside = number | null | "blank or 0";

/**
 * Coefficient of a named fitting whose shape and angle stand beside it, or of a list that carries its own.
 *
 * @param items the list as read
 * @param shape [-], or in `inch` where the fitting goes by diameter; null = as in the list, else the usual one; a blank that
 *   may be a 0 likewise, but refused where the fitting has such a number and its text does not say it
 * @param angle [degrees] null likewise
 * @param inch [m] length of one diameter unit
 * @returns [-]
 * @throws DomainError if a shape or angle is given beside a list, beside one that has its own, or outside the printed points
 * @source points each names its own
 */
export function singleCoefficient(items: readonly FittingItem[], shape: Beside, angle: Beside, inch: number): number {
  return coefficientBeside(items, meant(items, "shape", shape), meant(items, "angle", angle), inch);
}

const ZERO = { shape: SHARP[0]!, angle: DEGREES[0]! }; // what says a 0

function meant(items: readonly FittingItem[], axis: "shape" | "angle", given: Beside): number | null {
  if (given !== "blank or 0") return given;
  const [item] = items;
  const family = items.length === 1 && item !== undefined && item[axis] === null ? item.family : null;
  if (family == null || family[axis] === null) return null;
  const { name, usual } = family[axis];
  const otherwise = usual === null ? "" : `, or left out for ${usual}`;
  throw new DomainError(axis, null, `a number other than 0, "${ZERO[axis]}" for 0${otherwise} (${name})`);
}

function coefficientBeside(
  items: readonly FittingItem[],
  shape: number | null,
  angle: number | null,
  inch: number,
): number {
  if (shape === null && angle === null) return listCoefficient(items, null);
  const [item] = items;
  const argument = shape === null ? "angle" : "shape";
  if (item === undefined || items.length > 1 || item.family === null) {
    throw new DomainError(argument, shape ?? angle, "left out beside a list or a bare K");
  }
  if ((shape !== null && item.shape !== null) || (angle !== null && item.angle !== null)) {
    throw new DomainError(argument, shape ?? angle, "left out: the fitting's text has its own number");
  }
  const scale = item.family.shape?.quantity === "diameter" ? inch : 1;
  const form = shape === null ? item.shape : shape * scale;
  return item.count * lossCoefficient(item.family, form, angle ?? item.angle);
}
