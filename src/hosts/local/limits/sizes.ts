/** An argument as the grid hands it to a function: one value, or rows by column. */
export type Argument = Value | readonly (readonly (Value | undefined)[])[] | undefined;

export interface Value {
  readonly value: unknown;
  readonly message?: unknown;
}

export const isMatrix = (argument: Argument): argument is readonly (readonly (Value | undefined)[])[] =>
  Array.isArray(argument);

export const widthOf = (argument: Argument): number => (isMatrix(argument) ? argument.length : 1);

export const heightOf = (argument: Argument): number => (isMatrix(argument) ? (argument[0]?.length ?? 0) : 1);

/** Cells of a range; 0 of a single value. */
export const cellsOf = (argument: Argument): number =>
  isMatrix(argument) ? widthOf(argument) * heightOf(argument) : 0;

/** The first value of an argument. */
export const valueOf = (argument: Argument): unknown =>
  (isMatrix(argument) ? argument[0]?.[0]?.value : argument?.value) ?? null;

/** A number as functions take it, never below 0; otherwise where there is none. */
export function countOf(argument: Argument, otherwise: number): number {
  const value = valueOf(argument);
  if (value === null || value === "") return otherwise;
  const count = Number(value);
  return Number.isNaN(count) ? otherwise : Math.abs(count);
}

export const largest = (numbers: readonly number[]): number => numbers.reduce((most, one) => Math.max(most, one), 0);

export const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
