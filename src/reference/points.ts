/** Printed rows of a loss table into points, so that a table here reads like the page it comes from. */
import type { LossPoint, Provenance } from "./schema";

type Pair = readonly [at: number, coefficient: number];

/** One coefficient without any axis. */
export const alone = (from: Provenance, coefficient: number): LossPoint => ({
  shape: null,
  angle: null,
  coefficient,
  ...from,
});

/** A row along the shape axis, at one angle where the family has two axes. */
export const byShape = (from: Provenance, rows: readonly Pair[], angle: number | null = null): readonly LossPoint[] =>
  rows.map(([shape, coefficient]) => ({ shape, angle, coefficient, ...from }));

/** A row along the angle axis. */
export const byAngle = (from: Provenance, rows: readonly Pair[]): readonly LossPoint[] =>
  rows.map(([angle, coefficient]) => ({ shape: null, angle, coefficient, ...from }));

/** A row along the diameter in mm, at one angle where the family has two axes. */
export const byMillimetres = (
  from: Provenance,
  rows: readonly Pair[],
  angle: number | null = null,
): readonly LossPoint[] => rows.map(([mm, coefficient]) => ({ shape: mm / 1000, angle, coefficient, ...from }));

/** A table with angles across and shapes down; null where the page could not be read. */
export const byTable = (
  from: Provenance,
  angles: readonly number[],
  rows: readonly (readonly [shape: number, coefficients: readonly (number | null)[]])[],
): readonly LossPoint[] =>
  rows.flatMap(([shape, coefficients]) =>
    angles.flatMap((angle, column) => {
      const coefficient = coefficients[column] ?? null;
      return coefficient === null ? [] : [{ shape, angle, coefficient, ...from }];
    }),
  );
