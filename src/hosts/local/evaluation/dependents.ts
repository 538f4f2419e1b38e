import type { Evaluator, Ranges, SheetRange } from "./evaluator";

/**
 * Adds to a set of cells whatever rests on some of them, in any number of steps, as the library finds it. The library puts a
 * formula into its sets once for each cell that the formula names, and sorts out afterwards that it had it: a table of forty
 * runs has ten thousand such cells and less than two thousand formulas. Here a formula is looked at once.
 */
export function addDependents({ formulaDependencies }: Evaluator): (cells: Ranges, of: Iterable<SheetRange>) => void {
  const { forest } = formulaDependencies();
  const seen = new Map<SheetRange, number>(); // formulas below each other are one, to which the library may add one more meanwhile
  return (cells, of) => {
    const none = cells.copy();
    none.clear();
    const waiting = [...of];
    for (let range = waiting.pop(); range !== undefined; range = waiting.pop()) {
      const { sheetId, zone } = range;
      const columns = forest[sheetId];
      if (columns === undefined) continue;
      const fresh = none.copy();
      for (let col = zone.left; col <= zone.right; col++)
        for (const { dependents } of columns[col]?.query(zone) ?? []) {
          if (seen.get(dependents) === dependents.zone.bottom) continue;
          seen.set(dependents, dependents.zone.bottom);
          if (!cells.has(dependents)) fresh.add(dependents);
        }
      cells.addMany(fresh);
      waiting.push(...fresh);
    }
  };
}
