import { tokenize } from "@borgar/fx";
import { cellAddress } from "../../sheets/address";
import type { RangeRef } from "../../sheets/rangeRef";
import { columnsOf, rowsOf } from "../../sheets/rectangle";
import { sheetPrefix } from "../../sheets/sheetPrefix";

/** One cell of a range as a formula on `sheet` writes it, rows and columns from 0; a range of one row or column meets all. */
export function cellOf(range: RangeRef, row: number, column: number, sheet: string): string {
  const address = cellAddress(
    range.left + (columnsOf(range) === 1 ? 0 : column),
    range.top + (rowsOf(range) === 1 ? 0 : row),
  );
  return range.sheet === sheet ? address : `${sheetPrefix(range.sheet)}${address}`;
}

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
