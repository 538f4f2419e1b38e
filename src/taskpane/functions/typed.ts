import { eitherWay } from "../../sheets/eitherWay";
import { readRange } from "../../sheets/rangeRef";
import type { CellName } from "../../sheets/workbook";
import type { Cell, Matrix } from "./callFunction";

/** What a person typed for an argument. A range or a name stands for cells; a text is quoted in the formula. */
export type Typed =
  | { readonly kind: "nothing" }
  | { readonly kind: "value"; readonly value: string | number }
  | { readonly kind: "cells"; readonly reference: string };

const NUMBER = /^[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[-+]?\d+)?$/i;
const THOUSANDS = /^[-+]?[1-9]\d{0,2},\d{3}$/; // "1,700" is 1700 to some and 1.7 to others: the function refuses the text

/** What is said beside digits that can be read in two ways, as 1.200; empty where there is one. A point is read as a decimal one, as in a formula. */
export function readInTwoWays(text: string): string {
  const read = eitherWay(text);
  if (read === null) return "";
  const { sign, large, small } = read;
  return sign === "."
    ? `${text.trim()} counts as ${small}, not as ${large}. `
    : `${text.trim()} may mean ${large} or ${small}: type one of these. `;
}

export function readTyped(text: string, names: readonly CellName[]): Typed {
  const trimmed = text.trim();
  if (trimmed === "") return { kind: "nothing" };
  if (NUMBER.test(trimmed) && !THOUSANDS.test(trimmed))
    return { kind: "value", value: Number(trimmed.replace(",", ".")) };
  const isName = names.some(({ name }) => name.toLowerCase() === trimmed.toLowerCase());
  if (isName || readRange(trimmed, "") !== null) return { kind: "cells", reference: trimmed };
  const unquoted = /^"(.*)"$/.exec(trimmed)?.[1] ?? trimmed;
  return { kind: "value", value: unquoted };
}

function written(typed: Typed): string {
  if (typed.kind === "nothing") return "";
  if (typed.kind === "cells") return typed.reference;
  return typeof typed.value === "number" ? String(typed.value) : `"${typed.value.replaceAll('"', '""')}"`;
}

/** The formula as one types it, in English with commas; arguments that are left out at its end are left away. */
export function formulaText(name: string, args: readonly Typed[]): string {
  const last = args.reduce((found, { kind }, index) => (kind === "nothing" ? found : index), -1);
  return `=DUCT.${name}(${args
    .slice(0, last + 1)
    .map(written)
    .join(",")})`;
}

/** The argument as a function takes it; `cells` gives what stands under a reference, or null where nobody knows. */
export function argumentOf(typed: Typed, cells: (reference: string) => Matrix | null): Matrix | null {
  if (typed.kind === "nothing") return null;
  if (typed.kind === "value") return [[typed.value satisfies Cell]];
  return cells(typed.reference);
}
