/** One line of the bench's answer. A ratio has no unit, and its two times were taken in turn in one run. */
export interface Row {
  readonly what: string;
  readonly value: number | null; // null where it could not be measured here
  readonly unit: "" | "s" | "kB";
  readonly goal: { readonly atMost: number } | { readonly atLeast: number } | null;
  readonly why?: string; // it could not be measured
}

export const ratio = (what: string, value: number, goal: Row["goal"] = null): Row => ({ what, value, unit: "", goal });
export const seconds = (what: string, value: number, goal: Row["goal"] = null): Row => ({
  what,
  value,
  unit: "s",
  goal,
});
export const kilobytes = (what: string, value: number, goal: Row["goal"] = null): Row => ({
  what,
  value,
  unit: "kB",
  goal,
});

/** "12.3 s"; three figures. */
export const shownValue = ({ value, unit, why }: Row): string =>
  value === null ? `not measured: ${why ?? ""}` : `${Number(value.toPrecision(3))} ${unit}`.trim();

/** "met", "missed", or nothing where there is no goal. */
export function verdict({ value, goal }: Row): string {
  if (goal === null || value === null) return "";
  return ("atMost" in goal ? value <= goal.atMost : value >= goal.atLeast) ? "met" : "missed";
}

export const shownGoal = ({ goal, unit }: Row): string =>
  goal === null ? "" : `${"atMost" in goal ? `at most ${goal.atMost}` : `at least ${goal.atLeast}`} ${unit}`.trim();
