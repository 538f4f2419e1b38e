import type { Measured } from "./measure";

/** One line of the bench's answer. */
export interface Row {
  readonly what: string;
  readonly against: string; // the yardstick: a ratio's other job, taken in turn with it; "" where it stands for itself
  readonly value: Measured | null; // null where it could not be measured here
  readonly before: Measured | null; // the same by the build before; null without one, and where it cannot do it
  readonly unit: "" | "s" | "ms" | "kB";
  readonly goal: Goal;
  readonly why?: string; // it could not be measured
}

export type Goal = { readonly atMost: number } | { readonly atLeast: number } | null;

/** A ratio of two times has no unit, and means the same on any machine. */
export const ratio = (what: string, against: string, value: Measured, goal: Goal = null): Row => ({
  ...{ what, against, value, goal },
  before: null,
  unit: "",
});

/** @param value in seconds */
export const seconds = (what: string, value: Measured, goal: Goal = null): Row => ({
  ...{ what, value, goal },
  against: "",
  before: null,
  unit: "s",
});

/** @param value in milliseconds */
export const milliseconds = (what: string, value: Measured, goal: Goal = null): Row => ({
  ...{ what, value, goal },
  against: "",
  before: null,
  unit: "ms",
});

export const kilobytes = (what: string, size: number, goal: Goal = null): Row => ({
  ...{ what, goal },
  value: { middle: size, from: size, to: size },
  against: "",
  before: null,
  unit: "kB",
});

export const notMeasured = (what: string, why: string): Row => ({
  ...{ what, why },
  against: "",
  value: null,
  before: null,
  unit: "",
  goal: null,
});

/** Each row with what the row of the same name says of the build before. */
export const beside = (rows: readonly Row[], before: readonly Row[]): Row[] =>
  rows.map((row) => ({
    ...row,
    before: before.find(({ what, against }) => what === row.what && against === row.against)?.value ?? null,
  }));

const figures = (value: number): string => String(Number(value.toPrecision(3)));
const shown = (value: Measured, unit: Row["unit"]): string => `${figures(value.middle)} ${unit}`.trim();

/** "12.3 s"; three figures. */
export const shownValue = ({ value, unit, why }: Row): string =>
  value === null ? `not measured: ${why ?? ""}` : shown(value, unit);

/** The same of the build before; nothing where there is none. */
export const shownBefore = ({ before, unit }: Row): string => (before === null ? "" : shown(before, unit));

/** "12.1 to 12.6"; nothing for a size, which is always the same. */
export const shownSpread = ({ value }: Row): string =>
  value === null || value.from === value.to ? "" : `${figures(value.from)} to ${figures(value.to)}`;

/** "met", "missed", or nothing where there is no goal. */
export function verdict({ value, goal }: Row): string {
  if (goal === null || value === null) return "";
  return ("atMost" in goal ? value.middle <= goal.atMost : value.middle >= goal.atLeast) ? "met" : "missed";
}

export const shownGoal = ({ goal, unit }: Row): string =>
  goal === null ? "" : `${"atMost" in goal ? `at most ${goal.atMost}` : `at least ${goal.atLeast}`} ${unit}`.trim();
