/** functions.json: what Excel, the local sheet and the pane know of the cell functions. */
export interface FunctionsFile {
  readonly functions: readonly FunctionMetadata[];
  readonly enums?: readonly ChoiceMetadata[];
  readonly allowErrorForDataTypeAny?: boolean; // whether the functions want to see error cells
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl?: string;
  readonly parameters: readonly ParameterMetadata[];
}

export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type?: string;
  readonly dimensionality?: "scalar" | "matrix";
  readonly optional?: boolean;
  readonly customEnumId?: string;
}

/** The few words that an argument may take, each with what it means. */
export interface ChoiceMetadata {
  readonly id: string;
  readonly type: string;
  readonly values: readonly { readonly name: string; readonly stringValue: string; readonly tooltip: string }[];
}

/** The scripts that hold the functions. A host of ours runs all before it calls one; Excel's page has the first fetch the others. */
export const FUNCTION_SCRIPTS = ["functions.js", "functionsLater.js", "functionsTables.js"] as const;
