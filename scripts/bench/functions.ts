// Printed as rows: the built functions without a sheet, those of the build before in turn with them.
import { cells } from "./cells";
import { beside, type Row } from "./row";
import { sizesSearch } from "./sizesSearch";
import { tables } from "./tables";

function functions(dist: string, before: string | null): Row[] {
  const overCells = before === null ? cells(dist) : beside(cells(dist), cells(before));
  return [...overCells, ...tables(dist, before), ...sizesSearch()];
}

process.stdout.write(JSON.stringify(functions(process.argv[2]!, process.argv[3] ?? null)));
