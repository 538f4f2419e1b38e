import { convertibleUnits, type Quantity } from "./quantities";

/** Units as people type them behind a number. */

const kinds: Readonly<Partial<Record<Quantity, string>>> = {
  airflow: "airflow",
  pressure: "pressure",
  power: "power",
  diameter: "length",
  length: "length",
  area: "area",
  openArea: "area",
  velocity: "velocity",
};

/** Units of quantities that CONVERTUNIT does not know, by the spelling that we print. */
export const otherUnits: Readonly<Record<string, readonly string[]>> = {
  rpm: ["r/min", "1/min", "/min", "min-1", "min⁻¹", "min^-1", "rev/min", "U/min", "revolutions per minute"],
  V: ["volt", "volts", "vac"],
  A: ["amp", "amps", "ampere", "amperes"],
  "%": ["percent"],
  stages: ["stage"],
};

/** Other spellings of units that it knows. */
export const spellings: readonly (readonly [RegExp, string])[] = [
  [/^(in|inch|inches|")(of)?(wg|wc|h2o|water(gauge|column|lift)?)$/, "inwg"],
  [/^(inch|inches|")$/, "in"],
  [/^(feet|foot|')$/, "ft"],
  [/^met(er|re)s?$/, "m"],
  [/^[as]cfm$/, "cfm"],
  [/^m3\/?hr?$/, "m3/h"],
  [/^(peak)?(b?hp|horsepower)(peak)?$/, "hp"],
  [/^watts?$/, "w"],
  [/^sqm$/, "m2"],
  [/^mm(of)?(wc|ws|water(gauge|column)?)$/, "mmwg"],
];

/** What people also put into the brackets behind a name, and is none of the units that we read. */
export const unreadUnits: readonly string[] = [
  ...["m3", "ft3", "nm3/h", "m^3/h", "kg/h", "lb/min"],
  ...["inhg", "mmhg", "torr", "dapa", "oz"],
  ...["va", "kva", "hz", "rps", "krpm", "kv", "kg", "lb", "db", "dba"],
];

export const plainUnit = (text: string): string =>
  text.toLowerCase().replace(/²/g, "2").replace(/³/g, "3").replace(/[\s.]/g, "");

/** Whether a text is a unit, and of another quantity than this one; a single letter may be anything. */
export function isUnitOfAnother(typed: string, quantity: Quantity): boolean {
  const [own, spelled] = [kinds[quantity], spelledOut(typed)];
  if (own === undefined || spelled.length < 2 || factorOfTyped(typed, quantity, "") !== undefined) return false;
  return isConvertible(spelled);
}

/** Whether a text is a unit, a single letter included, but none in which such a number is read. */
export function isUnitOfNone(typed: string, quantity: Quantity, label: string): boolean {
  const [name, spelled] = [plainUnit(typed), spelledOut(typed)];
  const ours =
    isConvertible(spelled) ||
    Object.entries(otherUnits)
      .flat(2)
      .some((one) => plainUnit(one) === name);
  return (ours || unreadUnits.includes(name)) && factorOfTyped(typed, quantity, label) === undefined;
}

const isConvertible = (spelled: string): boolean =>
  Object.values(convertibleUnits).some((units) => named(units, spelled) !== undefined);

/** SI units in one of a unit that was typed behind a number of a quantity; undefined where it is none of it. Inches of a pressure are those of water. */
export function factorOfTyped(typed: string, quantity: Quantity, label: string): number | undefined {
  const name = plainUnit(typed);
  if (label in otherUnits)
    return [label, ...otherUnits[label]!].some((one) => plainUnit(one) === name)
      ? label === "%"
        ? 0.01
        : 1
      : undefined;
  const spelled = spelledOut(typed);
  return named(unitsOf(quantity), quantity === "pressure" && spelled === "in" ? "inwg" : spelled)?.factor;
}

function spelledOut(typed: string): string {
  const name = plainUnit(typed);
  return spellings.find(([pattern]) => pattern.test(name))?.[1] ?? name;
}

const named = <Row extends { readonly names: readonly string[] }>(units: readonly Row[], spelled: string) =>
  units.find(({ names }) => names.some((one) => plainUnit(one) === spelled));

/** The units that may be typed, as we print them. */
export const unitsInWords = (quantity: Quantity, label: string): string =>
  label in otherUnits
    ? label
    : unitsOf(quantity)
        .map(({ names }) => names[0]!)
        .join(", ");

const unitsOf = (quantity: Quantity) => convertibleUnits[kinds[quantity] ?? ""] ?? [];
