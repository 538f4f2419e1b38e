import { parseA1Ref, tokenize } from "@borgar/fx";
import { cellAddress } from "../../sheets/address";
import { quotedSheet } from "../references";
import type { RangeRef } from "../formula/rangeRef";

/** The cells that a reference such as Runs!$B$8:$S$48 names; null for whole columns, other workbooks and wrong addresses. */
export function readRange(text: string, sheet: string): RangeRef | null {
  const parsed = parseA1Ref(text);
  if (parsed === undefined || !("range" in parsed) || parsed.range == null) return null;
  const { range, context } = parsed;
  const [top, left, bottom, right] = [range.top, range.left, range.bottom ?? range.top, range.right ?? range.left];
  if (top == null || left == null || bottom == null || right == null || (context ?? []).length > 1) return null;
  return {
    sheet: context?.[0] ?? sheet,
    top: Math.min(top, bottom) + 1,
    left: Math.min(left, right) + 1,
    bottom: Math.max(top, bottom) + 1,
    right: Math.max(left, right) + 1,
  };
}

export const rowsOf = (range: RangeRef): number => range.bottom - range.top + 1;
export const columnsOf = (range: RangeRef): number => range.right - range.left + 1;
export const isOneCell = (range: RangeRef): boolean => rowsOf(range) === 1 && columnsOf(range) === 1;

/** One cell of a range as a formula on `sheet` writes it, rows and columns from 0; a range of one row or column meets all. */
export function cellOf(range: RangeRef, row: number, column: number, sheet: string): string {
  const address = cellAddress(
    range.left + (columnsOf(range) === 1 ? 0 : column),
    range.top + (rowsOf(range) === 1 ? 0 : row),
  );
  return range.sheet === sheet ? address : `${sheetPrefix(range.sheet)}${address}`;
}

/** A sheet's name before an address. A plain long word needs no quotes in any program, and formulas stay shorter without. */
export const sheetPrefix = (sheet: string): string =>
  /^[A-Z][a-z]{5,}$/.test(sheet) ? `${sheet}!` : `${quotedSheet(sheet)}!`;

/** A formula's text as it must stand on another sheet: its bare addresses get the name of the sheet they were on. */
export function onAnySheet(text: string, sheet: string): string {
  return tokenize(text)
    .map((token) =>
      (token.type === "range" || token.type === "range_beam") && !token.value.includes("!")
        ? `${sheetPrefix(sheet)}${token.value}`
        : token.value,
    )
    .join("");
}
