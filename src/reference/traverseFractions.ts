import { inches } from "./asPrinted";
import type { Provenance, ReferenceRow } from "./schema";

export type TraverseRule = "log-linear" | "log-Tchebycheff";

/** Where the points of a traverse stand on one line across a duct. */
export interface TraverseRow extends ReferenceRow {
  readonly rule: TraverseRule | "equal area";
  readonly duct: "round" | "rectangle";
  readonly fractions: readonly number[]; // of the diameter or side, from one wall
  readonly offered: boolean; // false: shown here only, no function takes it
  readonly usual: SizeRange | null; // [m] sizes for which the source names so many points; null = on demand
}

/** Sizes of duct [m]; a missing end is open. */
export interface SizeRange {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
}

const manual: Provenance = {
  source: "instrumentManuals",
  locator: "appendix on duct traverses",
  basis: "second-hand",
  checked: "2026-11-27",
};
const iso: Provenance = {
  source: "iso3966",
  locator: "positions of the measuring points",
  basis: "from memory",
  checked: null,
};
const method1: Provenance = { source: "epaMethod1Memory", locator: "Table 1-2", basis: "from memory", checked: null };

const logLinear = { rule: "log-linear", duct: "round", offered: true } as const;
const tchebycheff = { rule: "log-Tchebycheff", duct: "rectangle", offered: true } as const;
const tchebycheffRound = { rule: "log-Tchebycheff", duct: "round", offered: false, usual: null } as const;
const equalArea = { rule: "equal area", duct: "round", offered: false, usual: null } as const;

const DISAGREES =
  "Other places than log-linear for the same count. From memory, so no function takes it: look it up before use.";
const HALF = "Remembered for one radius; the other half by symmetry.";

/**
 * Fractions by rule and count, each row from one wall to the other. The rules place the points so that the plain mean of
 * the readings is the mean velocity of an ordinary velocity profile.
 */
export const traverseFractions: readonly TraverseRow[] = [
  {
    key: "log-linear 4",
    label: "Round duct, 4 points on a diameter",
    ...logLinear,
    fractions: [0.043, 0.29, 0.71, 0.957],
    usual: null,
    note: HALF,
    ...iso,
  },
  {
    key: "log-linear 6",
    label: "Round duct, 6 points on a diameter",
    ...logLinear,
    fractions: [0.032, 0.135, 0.321, 0.679, 0.865, 0.968],
    usual: { atMost: inches(10) },
    note: "Up to 10 in (254 mm). The source takes three diameters, 60 degrees apart.",
    ...manual,
  },
  {
    key: "log-linear 8",
    label: "Round duct, 8 points on a diameter",
    ...logLinear,
    fractions: [0.021, 0.117, 0.184, 0.345, 0.655, 0.816, 0.883, 0.979],
    usual: { above: inches(10) },
    note: "Above 10 in the source takes 8 or 10. It prints 0.981 for the last point, a slip: a second manual has 0.979, and so has symmetry.",
    ...manual,
  },
  {
    key: "log-linear 10",
    label: "Round duct, 10 points on a diameter",
    ...logLinear,
    fractions: [0.019, 0.077, 0.153, 0.217, 0.361, 0.639, 0.783, 0.847, 0.923, 0.981],
    usual: null,
    note: "Above 10 in the source takes 8 or 10; ask for 10 by its number.",
    ...manual,
  },
  {
    key: "log-tchebycheff 5",
    label: "Rectangular duct, 5 points along a side",
    ...tchebycheff,
    fractions: [0.074, 0.288, 0.5, 0.712, 0.926],
    usual: { below: inches(30) },
    note: "Sides under 30 in (762 mm). At least 25 points in the whole duct.",
    ...manual,
  },
  {
    key: "log-tchebycheff 6",
    label: "Rectangular duct, 6 points along a side",
    ...tchebycheff,
    fractions: [0.061, 0.235, 0.437, 0.563, 0.765, 0.939],
    usual: { atLeast: inches(30), atMost: inches(36) },
    note: "Sides of 30 to 36 in (762 to 914 mm).",
    ...manual,
  },
  {
    key: "log-tchebycheff 7",
    label: "Rectangular duct, 7 points along a side",
    ...tchebycheff,
    fractions: [0.053, 0.203, 0.366, 0.5, 0.634, 0.797, 0.947],
    usual: { above: inches(36) },
    note: "Sides above 36 in (914 mm).",
    ...manual,
  },
  {
    key: "log-tchebycheff round 6",
    label: "Round duct, 6 points on a diameter by log-Tchebycheff",
    ...tchebycheffRound,
    fractions: [0.032, 0.137, 0.312, 0.688, 0.863, 0.968],
    note: `${DISAGREES} ${HALF}`,
    ...iso,
  },
  {
    key: "log-tchebycheff round 8",
    label: "Round duct, 8 points on a diameter by log-Tchebycheff",
    ...tchebycheffRound,
    fractions: [0.024, 0.1, 0.194, 0.334, 0.666, 0.806, 0.9, 0.976],
    note: `${DISAGREES} ${HALF}`,
    ...iso,
  },
  {
    key: "equal area 6",
    label: "Round duct, 6 points on a diameter, middles of equal areas",
    ...equalArea,
    fractions: [0.044, 0.146, 0.296, 0.704, 0.854, 0.956],
    note: "The rule of stack tests. It reads a little high where the wall slows the air.",
    ...method1,
  },
  {
    key: "equal area 8",
    label: "Round duct, 8 points on a diameter, middles of equal areas",
    ...equalArea,
    fractions: [0.032, 0.105, 0.194, 0.323, 0.677, 0.806, 0.895, 0.968],
    note: "The rule of stack tests. It reads a little high where the wall slows the air.",
    ...method1,
  },
];

/** The rows from which a traverse may be taken. */
export const offeredTraverses = (rule: TraverseRule): readonly TraverseRow[] =>
  traverseFractions.filter((row) => row.offered && row.rule === rule);
