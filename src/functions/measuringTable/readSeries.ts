import { DomainError, type Limits } from "../../core/errors";
import { type Repeatability, REPEAT_PERCENT } from "../../core/measuring/difference";
import { readNumber, readWithin, singleCell } from "../arguments";
import { FROM_ZERO } from "../signature";
import { filledReadings } from "./filledReadings";

/** Readings in a unit that nobody need tell. */
export const readSeries = (name: string, given: unknown): number[] =>
  filledReadings(name, given, (place, cell) => readNumber(place, cell, "ratio", "IP"), "for a reading of 0");

/** How a reading repeats, where that is told; a part that is left out, blank or 0 is none, and null stands for neither. */
export function readRepeatability(percent: unknown, floor: unknown, hasRepeats: boolean): Repeatability | null {
  const known = { percent: part("percent", percent, REPEAT_PERCENT), floor: part("floor", floor, FROM_ZERO) };
  if (known.percent === 0 && known.floor === 0) return null;
  if (hasRepeats) throw new DomainError("repeats", "both", "left out where percent or floor is given");
  return known;
}

function part(name: string, given: unknown, limits: Limits): number {
  const cell = singleCell(name, given);
  return cell === null || cell === 0 ? 0 : readWithin(name, cell, "ratio", limits, "IP");
}
