import { DomainError } from "../errors";
import { type FittingItem, listCoefficient } from "./fittingList";
import { lossCoefficient } from "./lossCoefficient";

/**
 * Coefficient of a named fitting whose shape and angle stand beside it, or of a list that carries its own.
 *
 * @param items the list as read
 * @param shape [-], or in `inch` where the fitting goes by diameter; null = as in the list, else the usual one
 * @param angle [degrees] null likewise
 * @param inch [m] length of one diameter unit
 * @returns [-]
 * @throws DomainError if a shape or angle is given beside a list, beside one that has its own, or outside the printed points
 * @source points each names its own
 */
export function singleCoefficient(
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
