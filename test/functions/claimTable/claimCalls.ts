import "../../support/customFunctions";
import { claim } from "../../../src/functions/claims/claim";

export type Facts = Record<string, unknown>;
export interface Row {
  readonly claimed: string | number;
  readonly allowed: string | number;
  readonly unit: string;
  readonly verdict: string;
  readonly why: string;
  readonly source: string;
}

export const call = (facts: unknown[][], units: string | null = null): any[][] => claim(facts, [[units]]);

/** Every row but the closing one, by its check. */
export const rowsOf = (facts: Facts, units: string | null = null): Record<string, Row> => {
  const rows = Object.entries(allRowsOf(facts, units));
  return Object.fromEntries(rows.filter(([check]) => check !== "In short"));
};
export const allRowsOf = (facts: Facts, units: string | null = null): Record<string, Row> =>
  Object.fromEntries(
    call(Object.entries(facts), units)
      .slice(1)
      .map(([check, claimed, allowed, unit, verdict, why, source]) => [
        check,
        { claimed, allowed, unit, verdict, why, source },
      ]),
  );
export const inShortOf = (facts: Facts, units: string | null = null): string =>
  allRowsOf(facts, units)["In short"]!.why;
export const verdicts = (facts: Facts, units: string | null = null): Record<string, string> =>
  Object.fromEntries(Object.entries(rowsOf(facts, units)).map(([check, { verdict }]) => [check, verdict]));

// An invented data sheet.
export const sheet: Facts = {
  airflow: 1200,
  pressure: 11,
  "motor power": 2,
  "inlet diameter": 6,
  "impeller diameter": 12,
  "wheel kind": "radial",
  stages: 1,
  speed: 3450,
  "filter area": 30,
  "filter medium": "pleated cartridge",
  "filter rating": "5 micron",
  "hose diameter": 4,
  "hose length": 10,
  "hose kind": "corrugated",
  sound: 72,
};

/** What is said of a fact that cannot be read. */
export const told = (row: readonly [string, unknown], units: string | null = null) =>
  Object.values(rowsOf(Object.fromEntries([row]), units)).find(({ verdict }) => verdict === "not read")!;
