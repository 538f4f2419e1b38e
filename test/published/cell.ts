import "../support/customFunctions";

type CellFunction = (...args: any[]) => any[][];

/** What one cell shows that calls a function with single cells; null leaves an argument out. */
export function cell(call: CellFunction, ...args: readonly (number | string | null)[]): number {
  const [[value] = []] = call(...args.map((arg) => (arg === null ? null : [[arg]]))) as unknown[][];
  if (typeof value !== "number") throw new Error(`a number was expected; the cell shows ${String(value)}`);
  return value;
}
