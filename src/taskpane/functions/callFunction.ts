import { CellError, type CellFunction } from "../../hosts/local/customFunctions";

export type Cell = string | number | boolean | null;
export type Matrix = readonly (readonly Cell[])[];

/** A call of a cell function by its id; an argument that is left out is null. */
export interface Question {
  readonly id: string;
  readonly args: readonly (Matrix | null)[];
}

/** What a cell would show: rows of an answer, or an error with its sentence. */
export type FunctionAnswer =
  | { readonly rows: readonly (readonly (string | number | boolean)[])[] }
  | { readonly error: string; readonly message: string };

/** Calls a function as a spreadsheet does, and says what its cell would show. */
export function callFunction(functions: ReadonlyMap<string, CellFunction>, { id, args }: Question): FunctionAnswer {
  const cellFunction = functions.get(id.toUpperCase());
  if (cellFunction === undefined) return { error: "#NAME?", message: `there is no function ${id}` };
  try {
    const result = cellFunction(...args, { functionName: id, isInValuePreview: false });
    return { rows: (Array.isArray(result) ? (result as unknown[][]) : [[result]]).map((row) => row.map(shown)) };
  } catch (error) {
    if (error instanceof CellError) return { error: error.code, message: error.message };
    return { error: "#VALUE!", message: "" };
  }
}

/** As a spreadsheet shows it: nothing is a 0, and an item that is refused its error, here with its sentence. */
function shown(value: unknown): string | number | boolean {
  if (value instanceof CellError) return `${value.code} ${value.message}`.trim();
  return typeof value === "string" || typeof value === "number" || typeof value === "boolean" ? value : 0;
}
