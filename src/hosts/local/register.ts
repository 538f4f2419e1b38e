import { FUNCTION_SCRIPTS, type FunctionMetadata, type FunctionsFile, type ParameterMetadata } from "../functionsFile";
import type { CellFunction } from "./customFunctions";
import { CellError } from "./customFunctions";
import { errorToGrid, fromGrid, type GridMatrix, type GridValue, isGridMatrix, toGrid, transpose } from "./values";

/** The part of the grid's library that registering needs. */
export interface FunctionEngine {
  readonly addFunction: (name: string, description: GridFunction) => unknown;
  readonly errorTypes: Set<string>;
}

export interface GridFunction {
  readonly description: string;
  readonly category: string;
  readonly isExported: boolean;
  readonly args: readonly object[];
  readonly compute: (...values: unknown[]) => GridValue | GridValue[][];
}

/** Gives every function of functions.json to the grid under `NAMESPACE.NAME`, computed by the bundle's own code. */
export function registerAll(
  engine: FunctionEngine,
  namespace: string,
  file: FunctionsFile,
  functions: ReadonlyMap<string, CellFunction>,
): void {
  ["#VALUE!", "#REF!"].forEach((name) => engine.errorTypes.add(name)); // the grid itself calls these #ERROR and #REF
  for (const metadata of file.functions) {
    const cellFunction = functions.get(metadata.id.toUpperCase());
    if (cellFunction === undefined)
      throw new Error(`functions.json lists ${metadata.id}, which none of ${FUNCTION_SCRIPTS.join(", ")} associates`);
    const isError = (value: unknown): boolean => typeof value === "string" && engine.errorTypes.has(value);
    engine.addFunction(`${namespace}.${metadata.name}`, {
      description: metadata.description,
      category: "Duct",
      isExported: true,
      args: metadata.parameters.map(argumentOf),
      compute: computeOf(metadata, cellFunction, isError, file.allowErrorForDataTypeAny ?? false),
    });
  }
}

/** A range argument must accept matrices and errors, or the grid calls the function once for each cell of the range. */
const argumentOf = (parameter: ParameterMetadata): object => ({
  name: parameter.name,
  description: parameter.description,
  type: ["ANY"],
  optional: parameter.optional ?? false,
  acceptMatrix: parameter.dimensionality === "matrix",
  acceptErrors: true,
});

function computeOf(
  metadata: FunctionMetadata,
  cellFunction: CellFunction,
  isError: (value: unknown) => boolean,
  allowErrors: boolean,
): GridFunction["compute"] {
  return (...values) => {
    const args = metadata.parameters.map((parameter, index) => readArgument(values[index], parameter, isError));
    const wrong = allowErrors ? undefined : args.flat(2).find((value) => value instanceof CellError);
    if (wrong instanceof CellError) return { value: wrong.code, message: wrong.message };
    try {
      return toGrid(cellFunction(...args, { functionName: metadata.id, isInValuePreview: false }));
    } catch (error) {
      if (!(error instanceof CellError)) console.error(`DUCT.${metadata.name} failed`, error);
      return errorToGrid(error);
    }
  };
}

/** An omitted argument is null, as in Excel; a range, or one cell for a range, comes as rows. */
function readArgument(value: unknown, parameter: ParameterMetadata, isError: (value: unknown) => boolean): unknown {
  if (value === undefined) return null;
  const matrix: GridMatrix = isGridMatrix(value) ? value : [[value as GridValue]];
  const rows = transpose(matrix).map((row) => row.map((cell) => fromGrid(cell, isError)));
  return parameter.dimensionality === "matrix" ? rows : rows[0]?.[0];
}
