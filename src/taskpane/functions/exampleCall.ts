import { cellAddress } from "../../sheets/address";
import type { Matrix } from "./callFunction";
import type { Example } from "../../functions/guide";
import { argumentOf, formulaText, readTyped } from "./typed";
import { itemAt } from "../../reference/itemAt";

/** An example ready to show and to compute: its formula, the tables that its ranges stand for, and what to call. */
export interface ExampleCall {
  readonly formula: string;
  readonly tables: readonly { readonly range: string; readonly rows: Matrix }[];
  readonly args: readonly (Matrix | null)[];
}

/** Gives each table of an example a range of its own, side by side with a column between. */
export function exampleCall(name: string, { args }: Example): ExampleCall {
  const tables: { range: string; rows: Matrix }[] = [];
  let column = 1;
  const typed = args.map((arg) => {
    if (typeof arg === "string") return readTyped(arg, []);
    const last = column + itemAt(arg, 0).length - 1;
    const range = `${cellAddress(column, 1)}:${cellAddress(last, arg.length)}`;
    tables.push({ range, rows: arg });
    column = last + 2;
    return { kind: "cells", reference: range } as const;
  });
  return {
    formula: formulaText(name, typed),
    tables,
    args: typed.map((one, index) =>
      typeof args[index] === "string" ? argumentOf(one, () => null) : (args[index] ?? null)!,
    ),
  };
}

/** The arguments of a call, filled up with those that are left out. */
export const filledUp = (args: readonly (Matrix | null)[], parameters: number): (Matrix | null)[] =>
  Array.from({ length: parameters }, (_, index) => args[index] ?? null);
