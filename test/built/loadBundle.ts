import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { FUNCTION_SCRIPTS, type FunctionsFile } from "../../src/hosts/functionsFile";

export const dist = path.join(__dirname, "../../dist");

export interface Metadata extends FunctionsFile {
  readonly allowCustomDataForDataTypeAny?: boolean;
}

export const readMetadata = (): Metadata =>
  JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as Metadata;

/** The host's error, as a function throws it. */
export class HostError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

const ErrorCode = { invalidValue: "#VALUE!", notAvailable: "#N/A" };

/**
 * Runs the functions of dist/ with a CustomFunctions object and the bare language: no window, console, process or eval. The context is a
 * plain one, since in the usual kind every word of the language is looked up through a proxy.
 *
 * @param asRead the code of a script, as it is run
 */
export function loadBundle(asRead = (_script: string, code: string): string => code) {
  const associated: [string, (...cells: unknown[]) => unknown][] = [];
  const associate = (id: string, compute: (...cells: unknown[]) => unknown): number => associated.push([id, compute]);
  const context = vm.createContext(vm.constants.DONT_CONTEXTIFY, { codeGeneration: { strings: false, wasm: false } });
  Object.assign(context, {
    CustomFunctions: { associate, Error: HostError, ErrorCode, runsAllFiles: true },
    console: undefined,
  });
  vm.runInContext("Error.stackTraceLimit = 0", context); // a third of the time of a refused call, and nobody reads where it came from
  for (const script of FUNCTION_SCRIPTS)
    vm.runInContext(asRead(script, readFileSync(path.join(dist, script), "utf8")), context);
  const functions = new Map(associated);
  const declaredBy = new Map(readMetadata().functions.map(({ id, parameters }) => [id, parameters.length]));
  /** A call as the host makes it: left-out arguments are null, and an invocation object always comes last. */
  const call = (id: string, ...cells: unknown[]): unknown => {
    const compute = functions.get(id);
    const declared = declaredBy.get(id) ?? 0;
    if (compute === undefined) throw new Error(`${id} is not in the bundle`);
    return compute(...cells, ...new Array<null>(declared - cells.length).fill(null), { functionName: id });
  };
  return { ids: associated.map(([id]) => id), call };
}
