const LONGEST = 31; // characters of a sheet's name; names of cells may be longer, but none of ours is

/** A name that nothing has yet, compared without regard to case: the one wanted, or with the first free number behind it. */
export function freeName(wanted: string, taken: readonly string[], between = " "): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number++) {
    const tail = number === 1 ? "" : `${between}${number}`;
    const name = wanted.slice(0, LONGEST - tail.length) + tail;
    if (!used.has(name.toLowerCase())) return name;
  }
}

/** Whether a name is the wanted one, or that with a number behind it. */
export const isFreeName = (name: string, wanted: string, between = " "): boolean =>
  name.toLowerCase() === wanted.toLowerCase() ||
  (name.toLowerCase().startsWith(`${wanted}${between}`.toLowerCase()) &&
    /^[0-9]+$/.test(name.slice(wanted.length + between.length)));

/** A free name for each of several that are wanted, none of them given twice. */
export function freeNames(wanted: readonly string[], taken: readonly string[], between = " "): Map<string, string> {
  const names = new Map<string, string>();
  for (const name of wanted) names.set(name, freeName(name, [...taken, ...names.values()], between));
  return names;
}
