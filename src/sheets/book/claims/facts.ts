import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../../reference/quantities";

/** A fact that CLAIM knows, with the wide limits [SI] within which it takes it: what is outside was typed in another unit. */
export type Fact =
  | { readonly key: string; readonly quantity: Quantity; readonly low: number; readonly high: number }
  | { readonly key: string; readonly unit: string; readonly low: number; readonly high: number }
  | { readonly key: string; readonly words: string }; // a number or a text, as printed

/** In the order in which a data sheet gives them. A test holds them against CLAIM's own. */
export const facts = [
  { key: "airflow", quantity: "airflow", low: 0.002, high: 20 },
  { key: "pressure", quantity: "pressure", low: 25, high: 50_000 },
  { key: "motor power", quantity: "power", low: 10, high: 100_000 },
  { key: "inlet diameter", quantity: "diameter", low: 0.02, high: 1.5 },
  { key: "impeller diameter", quantity: "diameter", low: 0.05, high: 2 },
  { key: "speed", unit: "rpm", low: 100, high: 60_000 },
  { key: "filter area", quantity: "area", low: 0.05, high: 1000 },
  { key: "filter rating", words: "as printed" },
  { key: "hose diameter", quantity: "diameter", low: 0.02, high: 0.6 },
  { key: "hose length", quantity: "length", low: 0.1, high: 100 },
  { key: "sound", words: "as printed" },
] as const satisfies readonly Fact[];

export type FactKey = (typeof facts)[number]["key"];

/** The limits of a number in one unit system, rounded to three digits towards the inside. */
export function limitsOf(fact: Fact, system: UnitSystem): readonly [low: number, high: number] | null {
  if ("words" in fact) return null;
  const inUnit = (value: number): number => ("quantity" in fact ? fromSI(value, unitOf(fact.quantity, system)) : value);
  return [inwards(inUnit(fact.low), Math.ceil), inwards(inUnit(fact.high), Math.floor)];
}

function inwards(value: number, round: (number: number) => number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) - 2);
  const tidy = Number(value.toPrecision(12)); // so that 0.02 m is 20 mm and not a hair more
  return Number((round(Number((tidy / step).toPrecision(12))) * step).toPrecision(3));
}
