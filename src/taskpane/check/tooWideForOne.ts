import { openAloneIn } from "./openAlone";
import { type BookRun, type BookRuns, sameName } from "./runs";
import type { Seen } from "./seenIn";

/** A main in which dust settles whichever single gate is open. */
interface TooWide {
  readonly run: BookRun;
  readonly gates: number; // of hoods whose air it carries
  readonly greatest: { readonly velocity: number; readonly with: string } | null; // [m/s] with one gate open, where TOGETHER tells it
}

/** Such mains, as the book's answers of TOGETHER have them, that of most gates first; and their table. */
export interface MainsTooWide {
  readonly table: BookRuns;
  readonly mains: readonly TooWide[];
}

/**
 * Where a book has one budget and an answer of TOGETHER for each of a main's gates alone. One too slow with all its hoods at what
 * they ask for is no such main: no gate mends it, and Check says so in another line.
 */
export function mainsTooWide({ sheets, runs: tables, answers }: Seen): MainsTooWide | null {
  const [table, another] = tables;
  if (table === undefined || another !== undefined) return null;
  const { runs } = table;
  const alone = openAloneIn(sheets, runs);
  if (alone.length === 0) return null;
  const hoods = runs.filter(({ name, gated }) => gated && !runs.some(({ to }) => sameName(to, name)));
  const behind = new Map<BookRun, BookRun[]>();
  for (const hood of hoods) for (const run of wayOf(runs, hood)) behind.set(run, [...(behind.get(run) ?? []), hood]);
  const mains = [...behind].flatMap(([run, gates]): TooWide[] => {
    const sets = gates.flatMap((gate) => alone.filter(({ hood }) => sameName(hood, gate.name)));
    const isSlow = sets.every(({ tooSlow }) => tooSlow.some((name) => sameName(name, run.name)));
    if (gates.length < 2 || sets.length < gates.length || !isSlow) return [];
    const asked = answers.flatMap(({ of, rows }) => (of === "BUDGET" ? rows : []));
    if (asked.some((row) => sameName(row.run, run.name) && row.velocity !== null && row.velocity < run.dust.low))
      return [];
    const known = sets.flatMap(({ hood, slowest, velocity }) =>
      velocity !== null && sameName(slowest, run.name) ? [{ velocity, with: hood }] : [],
    );
    const isKnown = known.length === sets.length;
    const greatest = isKnown ? known.reduce((a, b) => (b.velocity > a.velocity ? b : a)) : null;
    return [{ run, gates: gates.length, greatest }];
  });
  const order = [...mains].sort((a, b) => b.gates - a.gates || Number(a.greatest === null) - Number(b.greatest === null)); // prettier-ignore
  return mains.length === 0 ? null : { table, mains: order };
}

/** The runs that a hood's air goes through behind its own, to the fan. */
function wayOf(runs: readonly BookRun[], hood: BookRun): BookRun[] {
  const way: BookRun[] = [];
  for (let run = next(runs, hood); run !== undefined && !way.includes(run); run = next(runs, run)) way.push(run);
  return way;
}

const next = (runs: readonly BookRun[], { to }: BookRun): BookRun | undefined =>
  runs.find(({ name, discharge }) => !discharge && sameName(name, to));
