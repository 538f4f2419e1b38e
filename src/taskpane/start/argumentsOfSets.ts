import { curveToSolve, densityAsked } from "../check/askedBeside";
import { matrixOf } from "../check/callArguments";
import type { BookRun } from "../check/runs";
import type { Seen } from "../check/seenIn";
import type { Matrix } from "../functions/callFunction";

/** The first budget of a book as TOGETHER and SOLVE take it. */
export interface AskedOfSets {
  readonly runs: readonly BookRun[];
  readonly table: Matrix;
  readonly curve: Matrix;
  readonly density: Matrix | null;
  readonly units: Matrix;
  readonly args: (most: number) => (Matrix | null)[]; // of TOGETHER
}

/** Null where the book has no runs, or no curve of a fan. */
export function argumentsOfSets(seen: Seen): AskedOfSets | null {
  const [runs] = seen.runs;
  const curve = runs && curveToSolve(seen, runs);
  if (runs === undefined || curve === undefined || curve === null) return null;
  const table = matrixOf(runs);
  const [density, units] = [densityAsked(seen, runs), [[runs.system]]];
  return { runs: runs.runs, table, curve, density, units, args: (most) => [table, curve, [[most]], density, units] };
}
