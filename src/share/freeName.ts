const LONGEST = 31; // characters of a sheet's name

/** A name that no sheet has yet, compared without regard to case: the wish itself, or with a number behind it. */
export function freeName(wish: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number++) {
    const tail = number === 1 ? "" : ` ${number}`;
    const name = wish.slice(0, LONGEST - tail.length) + tail;
    if (!used.has(name.toLowerCase())) return name;
  }
}
