/** A cell function as the bundle associates it: matrices or single values in, then the invocation. */
export type CellFunction = (...args: unknown[]) => unknown;

/** Names of the error codes, and what stands in the cell. */
export const errorCodes = {
  divisionByZero: "#DIV/0!",
  invalidName: "#NAME?",
  invalidNumber: "#NUM!",
  invalidReference: "#REF!",
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  nullReference: "#NULL!",
} as const;

/** The error that a cell function throws to choose what its cell shows. A class, since the bundle calls `new` on it. */
export class CellError extends Error {
  readonly code: string;
  constructor(code: string, message = "") {
    super(message);
    this.name = "CustomFunctions.Error";
    this.code = code;
  }
}

export interface CustomFunctionsObject {
  readonly Error: typeof CellError;
  readonly ErrorCode: typeof errorCodes;
  readonly runsAllFiles: true; // FUNCTION_SCRIPTS
  readonly associate: (idOrMap: string | Record<string, CellFunction>, cellFunction?: CellFunction) => void;
}

/**
 * The global object that functions.js expects, as Excel's own runtime has it: ids match in any case, and a later
 * association of an id replaces the earlier one with a warning.
 */
export function createCustomFunctions(warn: (message: string) => void): {
  readonly customFunctions: CustomFunctionsObject;
  readonly functions: ReadonlyMap<string, CellFunction>; // by upper-case id
} {
  const functions = new Map<string, CellFunction>();
  const associateOne = (id: string, cellFunction: CellFunction): void => {
    const key = id.toUpperCase();
    if (functions.has(key)) warn(`the cell function ${key} was associated twice; the later one is used`);
    functions.set(key, cellFunction);
  };
  const associate: CustomFunctionsObject["associate"] = (idOrMap, cellFunction) => {
    if (typeof idOrMap === "string") {
      if (cellFunction !== undefined) associateOne(idOrMap, cellFunction);
    } else {
      Object.entries(idOrMap).forEach(([id, one]) => associateOne(id, one));
    }
  };
  return { customFunctions: { Error: CellError, ErrorCode: errorCodes, runsAllFiles: true, associate }, functions };
}
