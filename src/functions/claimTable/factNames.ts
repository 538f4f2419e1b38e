import type { Quantity } from "../../reference/quantities";

/** A fact that CLAIM knows by name: a number within what such a thing can be, or a text. */
export interface FactName {
  readonly key: string;
  readonly kind: NumberFact | null; // null: a number or a text, taken as it stands
}

/** Wide limits [SI] that catch a number typed in the other system's unit; they judge nothing. */
export interface NumberFact {
  readonly quantity: Quantity;
  readonly low: number;
  readonly high: number;
  readonly unit?: string; // where the quantity has none
}

const number = (quantity: Quantity, low: number, high: number): NumberFact => ({ quantity, low, high });

export const factNames = [
  { key: "airflow", kind: number("airflow", 0.002, 20) },
  { key: "pressure", kind: number("pressure", 25, 50_000) },
  { key: "motor power", kind: number("power", 10, 100_000) },
  { key: "inlet diameter", kind: number("diameter", 0.02, 1.5) },
  { key: "impeller diameter", kind: number("diameter", 0.05, 2) },
  { key: "speed", kind: { ...number("ratio", 100, 60_000), unit: "rpm" } },
  { key: "filter area", kind: number("area", 0.05, 1000) },
  { key: "filter rating", kind: null },
  { key: "hose diameter", kind: number("diameter", 0.02, 0.6) },
  { key: "hose length", kind: number("length", 0.1, 100) },
  { key: "sound", kind: null },
] as const satisfies readonly FactName[];

export type FactKey = (typeof factNames)[number]["key"];
type TextKey = "filter rating" | "sound";

/** The facts that were given: numbers in SI (speed in rpm), texts as typed. */
export type Facts = Readonly<Partial<Record<Exclude<FactKey, TextKey>, number> & Record<TextKey, string | number>>>;
