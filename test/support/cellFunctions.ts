/** Every cell function with what its file says of it, found as the build finds them. */
import { readFileSync } from "node:fs";
import { functionFiles } from "../../scripts/functionFiles";
import type { Formula, Guide } from "../../src/functions/guide";
import type { Signature, Takes } from "../../src/functions/signature";
import { exampleCall, filledUp } from "../../src/taskpane/functions/exampleCall";

export type CellFunction = (...args: unknown[]) => (string | number)[][];

export interface Declared {
  readonly name: string;
  readonly call: CellFunction;
  readonly guide: Guide;
  readonly formula?: Formula;
  readonly takes?: Signature<Takes>; // of functions over single values
}

export const cellFunctions: readonly Declared[] = functionFiles.map((file) => {
  const name = /@customfunction ([A-Z]+)/.exec(readFileSync(file, "utf8"))![1]!;
  const said = jest.requireActual<Record<string, unknown>>(file);
  return { ...(said as unknown as Declared), name, call: said[name.toLowerCase()] as CellFunction };
});

/** The functions over single values, with their arguments in order and the place of the first among those of the call. */
export const signed = cellFunctions.flatMap(({ takes, ...declared }) => {
  if (takes === undefined) return [];
  const names = Object.keys(takes.takes);
  return [
    {
      ...declared,
      names,
      rules: Object.values(takes.takes),
      gives: takes.gives,
      units: takes.units,
      first: declared.call.length - names.length - (takes.units ? 1 : 0), // a fan's curve stands before them
    },
  ];
});

/** The arguments of a function's example, filled up with those that are left out. */
export const exampleArguments = ({ name, guide, call }: Pick<Declared, "name" | "guide" | "call">): unknown[] =>
  filledUp(exampleCall(name, guide.example).args, call.length);
