import type { Quantity } from "../../reference/quantities";

/** One line of a data sheet: a fact by the name that CLAIM knows, and what is claimed of it. */
export interface DataSheetLine {
  readonly fact: string;
  readonly says: number | string;
  readonly unit: { readonly quantity: Quantity } | { readonly words: string };
}

/**
 * An invented vendor's data sheet. Its fan holds together, its airflow is doubtful on any system and for its filter, and
 * the hose that comes with it cannot pass that airflow.
 */
export const dataSheet: readonly DataSheetLine[] = [
  { fact: "airflow", says: 1650, unit: { quantity: "airflow" } },
  { fact: "pressure", says: 9, unit: { quantity: "pressure" } },
  { fact: "motor power", says: 1.5, unit: { quantity: "power" } },
  { fact: "inlet diameter", says: 6, unit: { quantity: "diameter" } },
  { fact: "impeller diameter", says: 12, unit: { quantity: "diameter" } },
  { fact: "speed", says: 3450, unit: { words: "rpm" } },
  { fact: "filter area", says: 30, unit: { quantity: "area" } },
  { fact: "filter rating", says: "5 micron", unit: { words: "as printed" } },
  { fact: "hose diameter", says: 4, unit: { quantity: "diameter" } },
  { fact: "hose length", says: 10, unit: { quantity: "length" } },
  { fact: "sound", says: "72 dB", unit: { words: "as printed" } },
];
