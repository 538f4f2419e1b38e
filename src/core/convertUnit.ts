import { convertibleUnits } from "../reference/quantities";
import { DomainError } from "./errors";
import { findNamed, unknownName } from "./naming/findNamed";

interface ConvertibleUnit {
  readonly key: string;
  readonly aliases: readonly string[];
  readonly factor: number;
  readonly kind: string;
}

const units: readonly ConvertibleUnit[] = Object.entries(convertibleUnits).flatMap(([kind, list]) =>
  list.map(({ names: [key, ...aliases], factor }) => ({ key: key!, aliases, factor, kind })),
);

/**
 * A value in another unit of the same kind.
 *
 * @param value number in the first unit
 * @param from name of the first unit, such as "cfm"
 * @param to name of the second unit
 * @returns number in the second unit
 * @throws DomainError for an unknown unit (with the nearest ones) or units of two kinds
 * @source nistSp811 exact definitions; in.w.g. is the inch of water at 60 °F unless the name says 4 °C or 68 °F
 * @example convertUnit(1, "in", "mm") // => 25.4
 */
export function convertUnit(value: number, from: string, to: string): number {
  const first = requireUnit("from", from);
  const second = requireUnit("to", to);
  if (first.kind !== second.kind) {
    throw new DomainError("to", to, `a unit of ${first.kind} like "${first.key}", not of ${second.kind}`);
  }
  return (value * first.factor) / second.factor;
}

function requireUnit(argument: string, name: string): ConvertibleUnit {
  const unit = findNamed(units, name);
  if (unit === undefined) throw unknownName(argument, units, name, "a unit we know");
  return unit;
}
