import { parseA1Ref, tokenize } from "@borgar/fx";
import type { RangeRef } from "../../sheets/rangeRef";

const LAST_ROW = 1_048_576;
const LAST_COLUMN = 16_384;
const RANGES = new Set(["range", "range_beam", "range_ternary"]);

/** The cells that a formula on a sheet names, whole rows and columns as well. */
export const rangesIn = (formula: string, sheet: string): RangeRef[] =>
  tokenize(formula, { mergeRefs: true }).flatMap(({ type, value }) => {
    const parsed = RANGES.has(type) ? parseA1Ref(value, { allowTernary: true }) : undefined;
    if (parsed === undefined || !("range" in parsed) || parsed.range == null) return [];
    const { top, left, bottom, right } = parsed.range;
    return [
      {
        sheet: parsed.context?.at(-1) ?? sheet,
        top: (top ?? 0) + 1,
        left: (left ?? 0) + 1,
        bottom: (bottom ?? LAST_ROW - 1) + 1,
        right: (right ?? LAST_COLUMN - 1) + 1,
      },
    ];
  });
