import { readFileSync } from "node:fs";
import path from "node:path";
import { runInThisContext } from "node:vm";

type CellFunction = (...args: unknown[]) => unknown;

/** The functions as dist/functions.js hands them to its host, by their names. */
export function builtFunctions(dist: string): ReadonlyMap<string, CellFunction> {
  const associated = new Map<string, CellFunction>();
  const associate = (id: string, compute: CellFunction): void => void associated.set(id, compute);
  Object.assign(globalThis, { CustomFunctions: { associate } });
  runInThisContext(readFileSync(path.join(dist, "functions.js"), "utf8"));
  return associated;
}
