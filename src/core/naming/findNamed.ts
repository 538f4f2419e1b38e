import { closest, distance } from "fastest-levenshtein";
import { DomainError, shown } from "../errors";

export interface Named {
  readonly key: string;
  readonly aliases?: readonly string[];
}

/**
 * Names are compared without regard to case, outer blanks, repeated blanks and hyphens.
 *
 * @returns the spelling that two equal names share
 * @source house
 */
export const plain = (text: string): string =>
  isPlain(text)
    ? text
    : text
        .trim()
        .toLowerCase()
        .replace(/[\s_-]+/g, " ");

const [BLANK, HYPHEN, UNDERLINE, TILDE] = [32, 45, 95, 126];

/** Most names stand in that spelling already, and large tables have many: no capitals, single blanks between signs of ASCII. */
function isPlain(text: string): boolean {
  let blankMayCome = false;
  for (let place = 0; place < text.length; place++) {
    const code = text.charCodeAt(place);
    const isCapital = code > 64 && code < 91;
    if (code < BLANK || code > TILDE || code === HYPHEN || code === UNDERLINE || isCapital) return false;
    if (code === BLANK && !blankMayCome) return false;
    blankMayCome = code !== BLANK;
  }
  return blankMayCome;
}

/**
 * The row whose key or alias this is; undefined when there is none.
 *
 * @returns the row, whichever of its names was asked for
 * @source house
 */
export function findNamed<Row extends Named>(rows: readonly Row[], name: string): Row | undefined {
  let byName = indexes.get(rows) as Map<string, Row> | undefined;
  if (byName === undefined) {
    byName = new Map();
    for (const row of rows)
      for (const one of [row.key, ...(row.aliases ?? [])]) if (!byName.has(plain(one))) byName.set(plain(one), row);
    indexes.set(rows, byName);
  }
  return byName.get(plain(name));
}

/**
 * The row of a key that we name ourselves; a mistake of ours, said as one, where the table has none.
 *
 * @returns the row
 * @source house
 */
export function rowOf<Row extends Named>(rows: readonly Row[], key: string): Row {
  const row = findNamed(rows, key);
  if (row === undefined) throw new Error(`no row of that table is called ${key}`);
  return row;
}

/** A table never changes, and a column of cells asks it for the same few names again and again. */
const indexes = new WeakMap<readonly Named[], Map<string, Named>>();

const LONGEST_COMPARED = 60; // characters: a longer text is no misspelt name

/**
 * Up to three valid names that lie nearest to a wrong one, nearest first.
 *
 * @returns keys of rows
 * @source house
 */
export function nearestNames(rows: readonly Named[], name: string): string[] {
  const wanted = plain(name).slice(0, LONGEST_COMPARED);
  const scored = rows.map((row) => {
    const names = [row.key, ...(row.aliases ?? [])].map(plain);
    return { key: row.key, score: Math.min(...names.map((candidate) => score(candidate, wanted))) };
  });
  return scored
    .sort((a, b) => a.score - b.score)
    .slice(0, 3)
    .map(({ key }) => key);
}

/** Distance of two names; a shared word or beginning counts for the candidate. */
function score(candidate: string, wanted: string): number {
  if (wanted !== "" && candidate.startsWith(wanted)) return 0;
  const words = candidate.split(" ");
  const shared = wanted.split(" ").filter((word) => word.length > 2 && words.includes(word)).length;
  const best =
    words.length > 1
      ? Math.min(distance(candidate, wanted), distance(closest(wanted, words), wanted) + 1)
      : distance(candidate, wanted);
  return best - 2 * shared;
}

/**
 * The row of a name, or a DomainError that offers the nearest names.
 *
 * @returns the row
 * @source house
 */
export function requireNamed<Row extends Named>(
  argument: string,
  rows: readonly Row[],
  name: string,
  what: string,
): Row {
  const row = findNamed(rows, name);
  if (row === undefined) throw unknownName(argument, rows, name, what);
  return row;
}

/**
 * The refusal of a name that no row has, with those nearest to it.
 *
 * @returns an error to be thrown
 * @source house
 */
export function unknownName(argument: string, rows: readonly Named[], name: string, what: string): DomainError {
  const near = nearestNames(rows, name).map(shown);
  return new DomainError(argument, name, `${what} (nearest: ${near.join(", ")})`);
}
