import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { runInThisContext } from "node:vm";
import { FUNCTION_SCRIPTS } from "../../src/hosts/functionsFile";

type CellFunction = (...args: unknown[]) => unknown;

/** The functions as the scripts in dist/ hand them to its host, by their names. */
export function builtFunctions(dist: string): ReadonlyMap<string, CellFunction> {
  const associated = new Map<string, CellFunction>();
  const associate = (id: string, compute: CellFunction): void => void associated.set(id, compute);
  Object.assign(globalThis, { CustomFunctions: { associate, runsAllFiles: true, runsBothFiles: true } }); // the second is how an older build asks
  const scripts = FUNCTION_SCRIPTS.map((script) => path.join(dist, script)).filter(existsSync); // an older build has one
  for (const script of scripts) runInThisContext(readFileSync(script, "utf8"));
  return associated;
}
