import { type Look, lookOf, type StyleName, styles } from "../../../sheets/styles";
import type { CellValue } from "../../../sheets/workbook";

const names = Object.keys(styles) as StyleName[];

const LOOK_PARTS = ["ink", "fill", "bold", "italic", "size", "align", "wrap", "border"] as const;

const key = (look: Look): string => JSON.stringify(LOOK_PARTS.map((part) => look[part] ?? null));

const byLook = new Map<string, StyleName[]>();
for (const name of names) byLook.set(key(lookOf(name)), [...(byLook.get(key(lookOf(name))) ?? []), name]);

/**
 * The style of ours that looks like this, else the look itself. Two of ours look alike: a label is a text, a result is a
 * formula's or a number.
 */
export function styleOf(look: Look, content: CellValue, isFormula: boolean): StyleName | Look {
  const alike = byLook.get(key(look));
  if (alike === undefined) return look;
  const isResult = isFormula || typeof content !== "string";
  return (alike.includes("result") && isResult ? "result" : alike[0])!;
}

/** The style of ours whose ink and fill a flag has; any other flag is one of ours all the same, since a flag must have one. */
export const flagStyleOf = (look: Look): StyleName =>
  names.find((name) => lookOf(name).ink === look.ink && lookOf(name).fill === look.fill) ?? "flag";
