import type { StyleName } from "./styles";
import type { CellLook, CellValue, SheetCell } from "./workbook";

type Extra = Omit<CellLook, "at" | "style">;

export const text = (at: string, value: string, style: StyleName = "text", extra: Extra = {}): SheetCell => ({
  at,
  value,
  style,
  ...extra,
});

/** A cell that the user fills; null leaves it blank. */
export const input = (at: string, value: CellValue, extra: Extra = {}): SheetCell => ({
  at,
  value,
  style: "input",
  ...extra,
});

export const formula = (at: string, code: string, style: StyleName = "result", extra: Extra = {}): SheetCell => ({
  at,
  formula: code,
  style,
  ...extra,
});
